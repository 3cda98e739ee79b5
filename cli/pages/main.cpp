// Writes the manual pages, the completion and the schemas into a folder. Arguments: the folder, the date of
// the pages, the sample job.
#include <exception>
#include <string>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/job/format.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/report/json/json.hpp>

#include "pages.hpp"

int main(int argc, char** argv) {
    using namespace ringfill;
    if (argc != 4) {
        fmt::print(stderr, "write_pages: takes a folder, a date and a sample job\n");
        return 2;
    }
    try {
        const std::string folder = argv[1];
        const std::string date = argv[2];
        write_whole(folder + "/ringfill.1", cli::program_page(date));
        write_whole(folder + "/ringfill-job.5", cli::job_page(date, read_whole(argv[3], job_file_limit)));
        write_whole(folder + "/ringfill.bash", cli::bash_completion());
        write_whole(folder + "/ringfill-job.schema.json", job_schema());
        write_whole(folder + "/ringfill-plan.schema.json", plan_schema());
    } catch (const std::exception& error) {
        fmt::print(stderr, "write_pages: {}\n", error.what());
        return 1;
    }
    return 0;
}
