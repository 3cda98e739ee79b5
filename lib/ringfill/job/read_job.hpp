#pragma once

#include <ringfill/document/document.hpp>
#include <ringfill/document/parse.hpp>
#include <ringfill/job/job.hpp>

namespace ringfill {

/// The largest job file that is read [bytes].
inline constexpr std::size_t job_file_limit = DocumentLimits{}.bytes;

/// Reads a job from its document. Throws Faulty (Origin::job) with every fault of the file: unknown, missing
/// and doubled fields, wrong kinds, missing units, values out of range, names that refer to nothing, and worn
/// surfaces that do not make sense (section 1 of the computation).
Job read_job(const Document& document);

/// Judges a job made by hand by the same descriptions and rules as read_job() judges a file. Throws Faulty
/// (Origin::job) with every fault; their places have paths only, such as bores[0].length.
void judge_job(const Job& job);

/// Throws the faults of a job that was read from a document again, each with its line and a caret; those of
/// another origin as they are, since they have their file.
[[noreturn]] void throw_located(const Document& document, const Faulty& faulty);

/// Gives each procedure and bore the path that faults name it by, as read_job() does.
void set_paths(Job& job);

} // namespace ringfill
