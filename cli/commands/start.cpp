#include <filesystem>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/format.hpp>

#include "../terminal.hpp"
#include "commands.hpp"

namespace ringfill::cli {

void start_command(const Request& request) {
    std::error_code ignored;
    if (!request.file.empty() && std::filesystem::exists(request.file, ignored))
        throw Faulty(Origin::file, fault_in_file(request.file, "is there already and was not touched",
                                                 "choose another name or move it away first"));
    if (request.fields)
        return deliver(field_guide(), request.file);
    deliver(starter_job(request.units.value_or(UnitSystem::metric)), request.file);
}

} // namespace ringfill::cli
