#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What is known of one circumstance of a bore, a procedure or the job.
struct Fact {
    /// In the unit of the circumstance's name, or 1 for what is so and 0 for what is not; nothing: not known.
    std::optional<double> figure = {};
    std::string words = {};            ///< what has the figure, "the arc has", else the whole reason
    std::optional<Subject> about = {}; ///< nothing: the job
    bool may_be_more = false;          ///< a part of the figure is not known
};

/// What the cautions of the table are judged by.
struct WorkFacts {
    UnitSystem units = UnitSystem::metric;
    std::size_t bores = 0;
    std::size_t procedures = 0; ///< that some bore is welded by
    std::map<const Circumstance*, std::vector<Fact>> known = {};
    std::optional<Subject> about = {}; ///< what is looked at just now

    void add(const Circumstance* of, std::optional<double> figure, std::string words = {},
             bool may_be_more = false) {
        known[of].push_back({figure, std::move(words), about, may_be_more});
    }
};

/// What the site tells. A room has walls and a ceiling only under a roof.
void add_site(WorkFacts& facts, const Site& site);

/// A fuel that is burnt.
struct BurntFuel {
    std::string name;
    bool takes_oxygen = false;
};

/// What the fuels tell. A heater that is only assumed leaves other fuels open.
/// @param fuels empty: no flame; nothing: the job names no heater and none is counted with.
void add_fuels(WorkFacts& facts, const std::optional<std::vector<BurntFuel>>& fuels, bool is_assumed);

enum class Answer { no, unknown, yes };

/// Whether a trigger holds, for what, and why.
struct Judged {
    Answer answer = Answer::no;
    std::vector<Subject> about = {}; ///< bores or procedures; empty: the job
    std::string because = {};        ///< the numbers, or what the job does not say
    std::vector<Subject> open = {};  ///< bores or procedures that are not known, where others hold
    std::string_view field = {};     ///< of the job, that would settle what is not known
};

/// Judges one trigger: any fact that holds makes it so, else any that is not known leaves it open. What the
/// job does not say is unknown, never no. The job is meant where it is all of its bores or procedures.
Judged judged(const Trigger& trigger, const WorkFacts& facts);

} // namespace ringfill
