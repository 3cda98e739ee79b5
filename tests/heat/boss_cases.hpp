#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include <fmt/format.h>

#include <ringfill/heat/boss_walk.hpp>
#include <ringfill/heat/start_spot.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill::testing {

/// A boss of the reference and what is done to it, as the head of boss_heat.csv tells; lengths in mm.
struct ReferenceCase {
    double outside;
    double bore;
    double length;
    double plate; ///< 0: none
    double heater_W;
    double short_heating_s;
    double long_heating_s;
    double ring_s;
    double ring_W;
    int rings_at_60_s;
    int rings_at_12_s;
};

inline const std::map<std::string, ReferenceCase> reference_cases = {
    {"thin", {80, 50, 40, 0, 2000, 50, 80, 22.7, 1200, 5, 4}},
    {"medium", {200, 100, 100, 0, 7500, 243, 320, 45.5, 2220, 8, 10}},
    {"sample", {180, 95, 100, 0, 7500, 256, 260, 43.2, 2220, 8, 8}},
    {"heavy", {500, 120, 200, 0, 15000, 2300, 3000, 54.6, 2220, 8, 10}},
    {"mplate", {200, 100, 100, 30, 7500, 400, 500, 45.5, 2220, 8, 10}},
    {"splate", {140, 80, 60, 30, 5000, 250, 300, 36.4, 2220, 6, 6}}};

inline HotMetal plain_steel() {
    return {std::nullopt, carbon_steel_conductivity(celsius(150)), in_si<Density>(7850), "EN1993-1-2"};
}

/// A metal of one specific heat [J/(kg K)] and one conductivity [W/(m K)].
inline HotMetal constant_metal(double c, double lambda) {
    return {in_si<SpecificHeat>(c), in_si<Conductivity>(lambda), in_si<Density>(8000), "test"};
}

inline BossShape shape_of(double outside_mm, double bore_mm, double length_mm, double pitch_mm = 5) {
    return {millimetres(bore_mm / 2), millimetres(outside_mm / 2), millimetres(length_mm),
            millimetres(pitch_mm)};
}

/// The quantities of the reference by the names it gives them, in degrees Celsius and seconds.
class ReferenceRun {
  public:
    explicit ReferenceRun(const ReferenceCase& given) : given_(given), equation_(make(given)) {
        weld();
        const char* names[] = {"bare", "boss wrapped", "boss and plate wrapped"};
        for (int wraps = 0; wraps < (given.plate > 0 ? 3 : 2); ++wraps)
            cool(names[wraps], wraps);
    }

    const std::map<std::string, double>& values() const { return values_; }

  private:
    static BossEquation make(const ReferenceCase& given) {
        BossShape shape = shape_of(given.outside, given.bore, given.length);
        if (given.plate > 0)
            shape.plates = {{millimetres(given.plate), shape.length / 2.0, millimetres(300)}};
        return BossEquation(boss_mesh(shape), plain_steel(), celsius(4), 3.5);
    }

    void add(const std::string& name, double kelvin) { values_[name] = kelvin - 273.15; }

    BossWalk heated(double seconds) {
        BossWalk walk(equation_);
        BossLoad load;
        load.heater = given_.heater_W;
        walk.put(load);
        walk.advance(seconds);
        return walk;
    }

    void weld() {
        const BossMesh& mesh = equation_.mesh();
        BossWalk walk = heated(given_.short_heating_s);
        add("R: mean of the boss at heater off", mean_boss(mesh, walk.field()));
        add("R: bore (mean) at heater off", mean_bore(mesh, walk.field()));
        add("R: outer skin (mean) at heater off", mean_skin(mesh, walk.field()));
        walk.put({});
        BossWalk aside = walk;
        aside.advance(30);
        add("R: bore (mean) 30 s after heater off", mean_bore(mesh, aside.field()));
        walk.advance(120);
        add("R: coldest bore 120 s after heater off", coldest_bore(mesh, walk.field()));
        for (int ring = 0; ring < given_.rings_at_60_s + given_.rings_at_12_s; ++ring)
            lay(walk, ring, ring < given_.rings_at_60_s ? 60 : 12);
    }

    void lay(BossWalk& walk, int ring, double pause) {
        const BossMesh& mesh = equation_.mesh();
        const int bands = static_cast<int>(given_.length / 5);
        const double width = mesh.length / bands;
        BossLoad arc;
        arc.arc = given_.ring_W;
        arc.band = {ring % bands * width, (ring % bands + 1) * width};
        walk.put(arc);
        walk.advance(given_.ring_s);
        walk.put({});
        laid_.push_back({arc.band.middle(), given_.ring_W, given_.ring_s, 0});
        ended_.push_back(walk.seconds());
        const double next = ((ring + 1) % bands + 0.5) * width;
        double after = 0;
        for (const double look : {5.0, 12.0, 60.0}) {
            if (look > pause)
                break;
            walk.advance(look - after);
            after = look;
            const double band = bore_at(mesh, walk.field(), next);
            const std::string when = fmt::format("{:.0f} s after ring {}", look, ring);
            add("R: band mean " + when, band);
            add("R: start spot " + when,
                band + start_spot_excess(mesh, equation_.metal(), felt(walk.seconds()), next, band));
            add("R: mean of the boss " + when, mean_boss(mesh, walk.field()));
        }
    }

    std::vector<LaidRing> felt(double now) const {
        std::vector<LaidRing> rings;
        for (std::size_t i = laid_.size() - std::min(laid_.size(), rings_felt); i < laid_.size(); ++i) {
            rings.push_back(laid_[i]);
            rings.back().ended_ago = now - ended_[i];
        }
        return rings;
    }

    void cool(const std::string& name, int wraps) {
        const BossMesh& mesh = equation_.mesh();
        BossWalk walk = heated(given_.long_heating_s);
        walk.put({});
        walk.advance(120);
        const double begin = walk.seconds();
        BossLoad load;
        load.wrapped_outside = load.wrapped_bore = wraps > 0;
        load.wrapped_plates = wraps > 1;
        walk.put(load);
        double before = mean_bore(mesh, walk.field());
        while (before > celsius(30).value()) {
            const double length = walk.step(1e9);
            const double now = mean_bore(mesh, walk.field());
            for (const double degrees : {60.0, 30.0})
                if (const double at = celsius(degrees).value(); before > at && now <= at)
                    values_[fmt::format("C: time from 120 s after heater off to bore mean {:.0f} C, {}",
                                        degrees, name)] =
                        walk.seconds() - begin - length * (at - now) / (before - now);
            before = now;
        }
    }

    ReferenceCase given_;
    BossEquation equation_;
    std::vector<LaidRing> laid_;
    std::vector<double> ended_;
    std::map<std::string, double> values_;
};

} // namespace ringfill::testing
