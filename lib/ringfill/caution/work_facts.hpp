#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/job/hole.hpp>
#include <ringfill/job/site.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What of a procedure can hurt.
struct ProcedureFacts {
    std::string name;
    std::optional<Current> current; ///< nothing: the job does not say
    bool shielding_gas = false;
    bool flux = false; ///< in the wire or on the electrode
};

/// The most of an element in wire or base metal [percent by mass]; nothing: one of them is not known.
struct MetalFacts {
    std::optional<double> manganese;
    std::optional<double> chromium;
    std::optional<double> nickel;
    std::optional<double> copper;
};

/// What of a bore can hurt.
struct BoreFacts {
    std::string name;
    std::optional<Temperature> preheat; ///< its minimum; nothing: none could be given
    std::optional<Temperature> peak;    ///< nothing: no heat balance
    bool delayed_cracks = false;        ///< the rules of its metal ask for a wait before the crack test
    MetalFacts metal;
    std::vector<Hole> holes;
};

/// A fuel that is burnt.
struct FuelFacts {
    std::string name;
    bool takes_oxygen = false;
};

/// What the cautions of the table are judged by.
struct WorkFacts {
    Site site;
    UnitSystem units = UnitSystem::metric;
    std::vector<ProcedureFacts> procedures;
    std::vector<BoreFacts> bores;
    /// Empty: no flame; nothing: the job names no heater and none is counted with.
    std::optional<std::vector<FuelFacts>> fuels;
};

} // namespace ringfill
