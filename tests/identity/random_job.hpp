#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/units/show.hpp>

namespace ringfill::testing {

/// A job before it is written: every length in mm, so that the same job can be written in either unit, and
/// changed.
struct Sketch {
    enum class Form { diameter, radii, diameters };

    struct Station {
        double depth = 0;
        std::vector<double> readings;
    };
    struct Face {
        double inner = 0;
        double outer = 0;
        double build = 0;
    };
    struct Groove {
        double diameter = 0;
        double width = 0;
    };
    struct Procedure {
        std::string filler;
        std::string gas;
        double wire = 1;
        std::optional<double> feed;    ///< m/min
        std::optional<double> current; ///< A
        double travel = 300;           ///< mm/min
        std::optional<double> travel_max;
        bool helix = false;
        std::optional<double> efficiency;
        std::optional<double> bead_ratio;
        std::optional<double> pitch_ratio;
        std::optional<double> gas_flow; ///< L/min
        bool own_spools = false;
    };
    struct Bore {
        std::string name;
        int count = 1;
        std::string base;
        std::size_t procedure = 0;
        double finish = 0;
        double length = 0;
        std::optional<double> boss;
        Form form = Form::diameter;
        double diameter = 0; ///< of the one-diameter form
        double offset = 0;
        double offset_clock = 0; ///< degrees
        std::vector<Station> stations;
        std::optional<double> skim; ///< nothing: "none"
        double stock = 2;
        double overhang = 3;
        std::vector<Face> faces;
        std::vector<Groove> grooves;
    };

    std::vector<Procedure> procedures;
    std::vector<Bore> bores;
};

/// How many random jobs there are.
inline constexpr std::uint64_t random_jobs = 3'000;

/// Optimised, each property is tried on every random job. Not optimised or with sanitizers a plan takes
/// thirty times as long: then each property takes every sixth job, and together they still take all.
#if defined(NDEBUG) && !defined(__SANITIZE_ADDRESS__)
inline constexpr std::uint64_t seed_step = 1;
#else
inline constexpr std::uint64_t seed_step = 6;
#endif

/// The seeds that a property is tried on. @param property its number, from 0, another one for each.
std::vector<std::uint64_t> seeds_for(std::uint64_t property);

/// A job that can be planned, in any worn form, path, skim and with any faces and grooves. The same seed
/// gives the same job on every machine.
Sketch random_sketch(std::uint64_t seed);

/// The job's text, bare lengths in mm or inch.
std::string text_of(const Sketch& sketch, UnitSystem units = UnitSystem::metric);

/// The same job with its bores worn this much deeper on every side, in mm.
Sketch worn_deeper(Sketch sketch, double by);

} // namespace ringfill::testing
