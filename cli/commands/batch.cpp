#include <algorithm>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <malloc.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/document/lines.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/report/json/json.hpp>

#include "../cores.hpp"
#include "../end_request.hpp"
#include "../in_order.hpp"
#include "../progress_line.hpp"
#include "../table_folder.hpp"
#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {
namespace {

LineAnswer faulty_line(const Line& line, std::optional<Origin> origin, ExitCode status,
                       std::vector<Fault> faults) {
    for (Fault& fault : faults)
        if (origin == Origin::job)
            fault.place.line = line.number; // a job of one line knows only of its first
    LineAnswer answer{write_json_line(fault_document(line.number, origin, faults)), status, {}};
    faults.front().excerpt.clear();
    answer.why = to_string(faults.front());
    return answer;
}

/// What a job of one line is answered with: its plan, or why there is none. An empty line is answered by an
/// empty line, so that lines stay side by side.
LineAnswer answer_line(const Line& line, const std::string& name, const Request& request, const Shop& shop) {
    if (line.text.find_first_not_of(" \t\r") == std::string::npos && !line.too_long)
        return {"\n", planned, {}};
    try {
        if (line.too_long)
            throw Faulty(Origin::job,
                         fault_in_file(name, fmt::format("is larger than {} bytes", job_file_limit),
                                       "split the job into several lines"));
        const Document document = parse(name, line.text, Origin::job);
        return {plan_line(plan_of(document, request, shop, {}, {}).second), planned, {}};
    } catch (const Faulty& faulty) {
        return faulty_line(line, faulty.origin(), exit_code_of(faulty.origin()), faulty.faults());
    } catch (const std::exception& error) {
        return faulty_line(line, std::nullopt, our_fault,
                           {fault_in_file(name, fmt::format("a fault of the program: {}", error.what()),
                                          "please report it with the line")});
    }
}

/// Where answers go: a file that is whole or not there, or standard output as they come.
class Output {
  public:
    explicit Output(const std::string& name) {
        if (!name.empty())
            file_.emplace(name);
    }
    /// Whether more is wanted.
    bool put(const std::string& text) {
        if (!file_)
            return deliver_more(text);
        file_->write(text);
        return true;
    }
    void finish() {
        if (file_)
            file_->finish();
    }

  private:
    std::optional<WholeFile> file_;
};

/// Lets each thread keep the memory of its last line for the next one: given back to the system in between,
/// it would come again page by page.
void keep_memory() {
#ifdef __GLIBC__
    constexpr int bytes = 1 << 20;
    (void)::mallopt(M_TRIM_THRESHOLD, bytes);
    (void)::mallopt(M_MMAP_THRESHOLD, bytes);
#endif
}

struct Count {
    std::size_t answered = 0;
    std::size_t failed = 0;
    ExitCode worst = planned;
    std::string first_why;

    void add(LineAnswer& answer) {
        ++answered;
        if (answer.status == planned)
            return;
        if (failed++ == 0)
            first_why = std::move(answer.why);
        worst = std::max(worst, answer.status);
    }
};

std::string summary_of(const Count& count) {
    return fmt::format("ringfill: {} of {} lines cannot be planned; the first: {}\n", count.failed,
                       count.answered, count.first_why);
}

} // namespace

ExitCode batch_command(const Request& request) {
    const EndRequest end; // first, so that it is heard from the beginning
    const std::string name = request.file == "-" ? "standard input" : request.file;
    const Descriptor input(open_to_read(request.file));
    const Shop shop = read_shop(shelf_for(request.tables), plugin_folders(request.plugins));
    Output output(request.output);
    Lines lines(
        [&](char* into, std::size_t most) {
            try {
                return end.read(input.number(), into, most);
            } catch (const std::system_error& error) {
                refuse_reading(name, error.code().value());
            }
        },
        job_file_limit);
    Count count;
    keep_memory();
    {
        ProgressLine progress;
        const bool quiet = request.output.empty() && ::isatty(STDOUT_FILENO) == 1; // the answers show it
        answer_in_order({[&] {
                             auto line = lines.next();
                             return end.signal() == 0 ? std::move(line)
                                                      : std::nullopt; // cut short: it was not read whole
                         },
                         [&](const Line& line) { return answer_line(line, name, request, shop); },
                         [&](LineAnswer answer) {
                             count.add(answer);
                             if (!quiet)
                                 progress.show("lines answered", count.answered, 0);
                             return output.put(answer.text);
                         }},
                        usable_cores());
    }
    if (count.failed > 0)
        complain(summary_of(count));
    if (end.signal() != 0) {
        complain(fmt::format("ringfill: asked to end after line {} of {}{}\n", count.answered, name,
                             request.output.empty() ? "" : "; " + request.output + " was left as it was"));
        return interrupted;
    }
    output.finish();
    return count.worst;
}

} // namespace ringfill::cli
