#pragma once

#include <string>
#include <vector>

#include "options.hpp"

namespace ringfill::cli {

// What a command line may say, whatever reads its words. Each throws Faulty (Origin::command_line).

/// Refuses a value. @param value as it was written, may be empty.
[[noreturn]] void refuse(std::string value, std::string reason, std::string remedy);
[[noreturn]] void refuse_without_job(const std::string& command);

/// The words with "take" put first when the first one names a file; --help for none.
std::vector<std::string> with_default_command(std::vector<std::string> words);

/// Refuses words that each stand well alone, and not together, and takes - for standard output where a result
/// goes. @param has_no_job a command that asks for a job was given none.
void judge_request(Request& request, bool has_no_job);

} // namespace ringfill::cli
