#pragma once

#include <string>

namespace ringfill::cli {

// What is laid down beside the program, made from the rows that the program itself works from.

/// The manual page of the program, in mdoc. @param date as `.Dd` takes it: "January 31, 2026".
std::string program_page(const std::string& date);

/// The manual page of the job file, in mdoc. @param sample the text of a job that it shows whole.
std::string job_page(const std::string& date, const std::string& sample);

/// The completion of the program's words for bash.
std::string bash_completion();

} // namespace ringfill::cli
