#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/work_facts.hpp>
#include <ringfill/table/cautions.hpp>

namespace ringfill {

enum class Answer { no, unknown, yes };

/// Whether a trigger holds, for what, and why.
struct Judged {
    Answer answer = Answer::no;
    std::vector<std::string> about;     ///< bores or procedures; empty: the job
    std::string because;                ///< the numbers, or what the job does not say
    std::vector<std::string> open = {}; ///< bores or procedures that are not known, where others hold
};

/// What is left open because a field of the job is absent.
Judged unknown_because(const Trigger& trigger);

/// Judges one trigger. What the job does not say is unknown, never no.
Judged judged(const Trigger& trigger, const WorkFacts& facts);

} // namespace ringfill
