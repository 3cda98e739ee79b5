#pragma once

// The public door of the library: a shop is read once, jobs are planned in it, and each view of a plan is a
// text. All of it may be used from several threads at once; nothing prints, exits or asks a clock or network.
//
//     const auto shop = ringfill::read_shop({tables}, {plugins});
//     std::string text = ringfill::take_text(ringfill::plan_file("job.json", shop));

#include <memory>
#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/heat/run_blocks.hpp>
#include <ringfill/job/job.hpp>

namespace ringfill {

struct Plan; // their insides are the library's own and may change
struct Shop;

/// Tables and material families, ready for any number of jobs. Never null.
using SharedShop = std::shared_ptr<const Shop>;

/// A job and what was planned for it.
struct Planned {
    Job job;
    SharedShop shop;
    std::shared_ptr<const Plan> plan; ///< never null
};

/// Reads the tables of some folders (the product's own first, then those whose entries add to it or correct
/// it) and looks for families in others; a family is read when a job first names it. Throws Faulty
/// (Origin::table, Origin::file).
SharedShop read_shop(const std::vector<std::string>& table_folders,
                     const std::vector<std::string>& plugin_folders);

/// Reads a job from a file, or from standard input for "-". Throws Faulty with every fault of the file, its
/// line and a caret (Origin::job), or why the file cannot be read (Origin::file).
Job read_job(const std::string& file);

/// Reads a job from its text; the name stands for the file in what is told of its faults. Throws likewise.
Job read_job_text(const std::string& name, std::string text);

/// Plans a job, read or made by hand. Throws Faulty (Origin::job) with every fault and the path it stands at,
/// such as bores[0].length, or (Origin::table) with why a family that it names does not stand ready.
/// @param run_blocks runs the parts that take the time, so that they may go on several threads: at most two
/// for each bore, which follow its heat from the first flame to cold. The plan is the same to the last byte.
Planned plan(Job job, const SharedShop& shop, const RunBlocks& run_blocks = {});

/// Reads a job and plans it. Throws Faulty as read_job() does, the faults of the plan with line and caret
/// too.
Planned plan_file(const std::string& file, const SharedShop& shop, const RunBlocks& run_blocks = {});
Planned plan_text(const std::string& name, std::string text, const SharedShop& shop,
                  const RunBlocks& run_blocks = {});

// What the program prints, in UTF-8.
std::string take_text(const Planned& planned);     ///< what to take to the job
std::string passes_text(const Planned& planned);   ///< beads, layers and passes of each bore
std::string heat_text(const Planned& planned);     ///< preheat, limits between rings, cooling
std::string boring_text(const Planned& planned);   ///< cuts and speeds of the bar
std::string day_text(const Planned& planned);      ///< the work by the clock
std::string quote_text(const Planned& planned);    ///< what it costs, where the job has prices
std::string cautions_text(const Planned& planned); ///< what can hurt people, the machine or the weld
std::string working_text(const Planned& planned);  ///< how every figure was reached

// The same figures as tables of comma-separated values.
std::string take_csv(const Planned& planned);
std::string passes_csv(const Planned& planned);
std::string boring_csv(const Planned& planned);
std::string quote_csv(const Planned& planned);

/// Every figure of the plan as JSON (format ringfill-plan/1), each key with its unit.
std::string plan_json(const Planned& planned);

/// The sheet for the site: one page of HTML that needs no other file.
std::string sheet(const Planned& planned);

} // namespace ringfill
