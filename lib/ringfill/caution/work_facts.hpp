#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/caution/fire_watch.hpp>

namespace ringfill {

/// How the filler comes to the arc.
enum class Arc { wire, stick, rod };

/// What of a procedure can hurt.
struct ProcedureFacts {
    std::string name;
    Arc arc = Arc::wire;
    std::optional<Current> current; ///< nothing: the job does not say
    bool shielding_gas = false;
    bool flux = false; ///< in the wire or on the electrode
};

/// The most of an element in filler or base metal [percent by mass].
struct MetalShare {
    double most = 0;
    bool is_whole = true; ///< else one of the two is not known, and may hold more
};

struct MetalFacts {
    MetalShare manganese;
    MetalShare chromium;
    MetalShare nickel;
    MetalShare copper;
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
    std::vector<ProcedureFacts> procedures; ///< that some bore is welded by
    std::vector<BoreFacts> bores;
    /// Empty: no flame; nothing: the job names no heater and none is counted with.
    std::optional<std::vector<FuelFacts>> fuels;
    bool fuel_is_assumed = false; ///< the job names no heater
};

/// A job whose work is planned, bore by bore in the order of the job.
struct PlannedWork {
    const Job& job;
    const std::vector<Settings>& settings; ///< of the job's procedures, in their order
    const std::vector<GivenBore>& given;
    const std::vector<BorePlan>& bores;
    const FireWatch& fire_watch;
};

WorkFacts work_facts(const PlannedWork& work, const Fuels& fuels);

} // namespace ringfill
