#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/doubt.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/day/day_plan.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/material/shop.hpp>
#include <ringfill/plan/totals.hpp>
#include <ringfill/quote/quote.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// The whole of what is planned for a job.
struct Plan {
    std::string title;
    UnitSystem units = UnitSystem::metric;
    std::vector<BorePlan> bores;
    Totals totals = {};
    std::optional<DayPlan> day = {}; ///< nothing: some bore has no heat balance, the notes say which
    FireWatch fire_watch = {};
    std::vector<Need> take = {};
    std::optional<Quote> quote = {};      ///< nothing: the job gives no currency
    std::vector<Doubt> doubts = {};       ///< values that look mistyped
    std::vector<ReplacedRow> tables = {}; ///< rows of ours that tables of the user replace
    std::vector<Caution> cautions = {};   ///< those that apply, then those left open; by time of the work
    std::vector<std::string> notes = {};  ///< what is out of the usual, and what is not part of this plan
    std::vector<Working> working = {};    ///< how every figure was reached
    std::vector<Assumed> assumed = {};    ///< values that the job left out
    Bibliography sources = {};            ///< that the cautions cite
};

/// Called with how far a long plan is: what is worked on, which of how many. It is called for every bore, so
/// it must be quick; it changes nothing of the plan. By one thread at a time, which is any of those that run
/// blocks. May be empty.
using Progress = std::function<void(std::string_view what, std::size_t at, std::size_t of)>;

/// Plans a job with what stands ready in the shop. Pure: the same job and shop give the same plan.
/// Throws Faulty (Origin::job) with the faults of all bores and procedures; their places have paths into the
/// job only, see locate().
/// @param run_blocks runs what takes the time, the heat of each bore; the plan is the same in any sequence.
Plan plan(const Job& job, const Shop& shop, const Progress& progress = {}, const RunBlocks& run_blocks = {});

} // namespace ringfill
