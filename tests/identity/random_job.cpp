#include "identity/random_job.hpp"

#include <algorithm>
#include <array>

#include "identity/draw.hpp"

namespace ringfill::testing {
namespace {

struct Wire {
    const char* filler;
    const char* base;
    std::array<const char*, 2> gases;
    double diameter;
    double slowest; ///< wire feed, m/min
    double fastest;
    double current_low; ///< 0: no melting curve, so the feed must be given
    double current_high;
};

constexpr std::array wires = {
    Wire{"steel/ER70S-6", "steel/C45", {"M21", "C1"}, 0.8, 5, 12, 90, 180},
    Wire{"steel/ER70S-6", "steel/S355J2", {"M21", "M20"}, 0.9, 4, 12, 100, 210},
    Wire{"steel/ER70S-6", "steel/1045", {"M21", "C1"}, 1.0, 4, 10, 110, 240},
    Wire{"steel/ER70S-6", "steel/4140", {"M21", "C1"}, 1.2, 3, 9, 130, 300},
    Wire{"steel/ER70S-6", "steel/G20Mn5", {"M21", "C1"}, 1.14, 3, 9, 130, 300}, // no row of its own
    Wire{"steel/ER70S-6", "steel/C45", {"M21", "C1"}, 1.6, 2, 6, 210, 400},
    Wire{"steel/ER80S-D2", "steel/4140", {"M21", "C1"}, 1.2, 3, 9, 130, 300},
    Wire{"steel/E71T-1", "steel/A36", {"M21", "C1"}, 1.2, 4, 12, 0, 0},
    Wire{"steel/E71T-1", "steel/1018", {"M21", "C1"}, 1.6, 3.5, 8, 0, 0},
    Wire{"stainless/ER308L", "stainless/304", {"M12", "M13"}, 1.0, 4, 10, 0, 0},
    Wire{"stainless/ER309L", "stainless/316", {"M12", "M13"}, 1.2, 3, 9, 0, 0},
};

Sketch::Procedure random_procedure(Draw& draw, const Wire& wire) {
    Sketch::Procedure procedure;
    procedure.filler = wire.filler;
    procedure.gas = wire.gases[draw.chance(70) ? 0 : 1];
    procedure.wire = wire.diameter;
    const bool by_current = wire.current_high > 0 && draw.chance(40);
    if (!by_current || draw.chance(30))
        procedure.feed = draw.size(wire.slowest, wire.fastest);
    if (by_current)
        procedure.current = draw.size(wire.current_low, wire.current_high);
    procedure.travel = draw.size(300, 600);
    if (draw.chance(30))
        procedure.travel_max = procedure.travel * draw.size(1, 2);
    procedure.helix = draw.chance(40);
    if (draw.chance(40))
        procedure.efficiency = draw.size(0.8, 0.98);
    if (draw.chance(40))
        procedure.bead_ratio = draw.size(2.5, 4);
    if (draw.chance(40))
        procedure.pitch_ratio = draw.size(0.6, 0.8);
    if (draw.chance(30))
        procedure.gas_flow = draw.size(10, 20);
    procedure.own_spools = draw.chance(20);
    return procedure;
}

/// Readings at one to four rising depths; each is low or more and at most high.
void add_stations(Sketch::Bore& bore, Draw& draw, int readings, double low, double high) {
    const int stations = draw.whole(1, 4);
    for (int s = 0; s < stations; ++s) {
        Sketch::Station station;
        const double part = bore.length / stations;
        station.depth = std::min(bore.length, s * part + draw.size(0, 0.9 * part));
        for (int i = 0; i < readings; ++i)
            station.readings.push_back(draw.size(low, high));
        bore.stations.push_back(station);
    }
}

void wear(Sketch::Bore& bore, Draw& draw) {
    const double depth = draw.size(0.3, 3);
    bore.form = static_cast<Sketch::Form>(draw.whole(0, 2));
    if (bore.form != Sketch::Form::radii && draw.chance(70)) {
        bore.offset = draw.size(0, 0.9 * depth);
        bore.offset_clock = draw.size(0, 360);
    }
    if (bore.form == Sketch::Form::diameter)
        bore.diameter = bore.finish + 2 * depth;
    else if (bore.form == Sketch::Form::radii)
        add_stations(bore, draw, draw.whole(3, 24), bore.finish / 2 + 0.05, bore.finish / 2 + depth + 0.05);
    else
        add_stations(bore, draw, draw.whole(2, 12), bore.finish + 0.1, bore.finish + 2 * depth + 0.1);
}

void add_faces_and_grooves(Sketch::Bore& bore, Draw& draw) {
    for (int i = draw.chance(30) ? draw.whole(1, 2) : 0; i > 0; --i) {
        const double inner = bore.finish + draw.size(0, 10);
        bore.faces.push_back({inner, inner + draw.size(10, 80), draw.size(0.5, 4)});
    }
    for (int i = draw.chance(30) ? draw.whole(1, 3) : 0; i > 0; --i)
        bore.grooves.push_back({bore.finish + draw.size(0, 14), std::min(draw.size(1, 8), bore.length / 4)});
}

Sketch::Bore random_bore(Draw& draw, int number) {
    Sketch::Bore bore;
    bore.name = "bore " + std::to_string(number);
    bore.count = draw.chance(50) ? 1 : draw.whole(2, 12);
    bore.finish = draw.size(44, 300);
    bore.length = draw.size(15, 250);
    wear(bore, draw);
    if (draw.chance(80))
        bore.skim = draw.chance(20) ? 0 : draw.size(0.1, 1.5);
    bore.stock = draw.size(0.5, 3);
    bore.overhang = draw.chance(10) ? 0 : draw.size(1, 6);
    if (draw.chance(70))
        bore.boss = bore.finish + draw.size(40, 150);
    add_faces_and_grooves(bore, draw);
    return bore;
}

} // namespace

std::vector<std::uint64_t> seeds_for(std::uint64_t property) {
    std::vector<std::uint64_t> seeds;
    for (std::uint64_t seed = property % seed_step; seed < random_jobs; seed += seed_step)
        seeds.push_back(seed);
    return seeds;
}

Sketch random_sketch(std::uint64_t seed) {
    Draw draw(seed);
    Sketch sketch;
    std::vector<const Wire*> chosen;
    for (int i = draw.whole(1, 3); i > 0; --i) {
        chosen.push_back(&wires[static_cast<std::size_t>(draw.whole(0, static_cast<int>(wires.size()) - 1))]);
        sketch.procedures.push_back(random_procedure(draw, *chosen.back()));
    }
    for (int i = draw.whole(1, 4); i > 0; --i) {
        Sketch::Bore bore = random_bore(draw, i);
        bore.procedure = static_cast<std::size_t>(draw.whole(0, static_cast<int>(chosen.size()) - 1));
        bore.base = chosen[bore.procedure]->base;
        sketch.bores.push_back(bore);
    }
    return sketch;
}

Sketch worn_deeper(Sketch sketch, double by) {
    for (Sketch::Bore& bore : sketch.bores) {
        bore.diameter += 2 * by;
        for (Sketch::Station& station : bore.stations)
            for (double& reading : station.readings)
                reading += bore.form == Sketch::Form::diameters ? 2 * by : by;
    }
    return sketch;
}

} // namespace ringfill::testing
