#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/show.hpp>

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

/// The elements whose fume is judged, by their circumstances.
struct Element {
    Circumstance id;
    std::string_view symbol;
};
inline constexpr Element elements[] = {{Circumstance::manganese, "Mn"},
                                       {Circumstance::chromium, "Cr"},
                                       {Circumstance::nickel, "Ni"},
                                       {Circumstance::copper, "Cu"}};

/// What of a bore can hurt.
struct BoreFacts {
    std::string name;
    std::optional<Temperature> preheat; ///< its minimum; nothing: none could be given
    std::optional<Temperature> peak;    ///< nothing: no heat balance
    bool delayed_cracks = false;        ///< the rules of its metal ask for a wait before the crack test
    std::map<Circumstance, MetalShare> metal = {}; ///< by element
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

enum class Answer { no, unknown, yes };

/// Whether a trigger holds, for what, and why.
struct Judged {
    Answer answer = Answer::no;
    std::vector<Subject> about;     ///< bores or procedures; empty: the job
    std::string because;            ///< the numbers, or what the job does not say
    std::vector<Subject> open = {}; ///< bores or procedures that are not known, where others hold
};

/// Judges one trigger. What the job does not say is unknown, never no.
Judged judged(const Trigger& trigger, const WorkFacts& facts);

} // namespace ringfill
