#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/workshop.hpp>
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

/// The same for a figure that is compared with limits.
Judged judged_figure(const Trigger& trigger, const WorkFacts& facts);

/// What is left open because a field of the job is absent.
Judged unknown_because(const Trigger& trigger);

inline Subject subject_of(const BoreFacts& bore) {
    return {Concern::bore, bore.name};
}
inline Subject subject_of(const ProcedureFacts& procedure) {
    return {Concern::procedure, procedure.name};
}

/// Judges all bores or procedures: any that holds makes it so, else any that is not known leaves it open. The
/// job is meant where it is all of them.
/// @param holds tells whether it holds for one; nothing: not known. @param everyone how many there are.
template <class Each, class Holds>
Judged any_of(const Trigger& trigger, const std::vector<Each>& all, std::size_t everyone, Holds holds) {
    Judged found;
    for (const Each& one : all)
        if (const std::optional<bool> it = holds(one); !it)
            found.open.push_back(subject_of(one));
        else if (*it)
            found.about.push_back(subject_of(one));
    if (!found.about.empty())
        found.answer = Answer::yes;
    else if (!found.open.empty())
        found = {Answer::unknown, std::move(found.open), unknown_because(trigger).because};
    if (found.about.size() == everyone)
        found.about.clear();
    return found;
}

} // namespace ringfill
