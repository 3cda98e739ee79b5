// Where people write 0,5 the answer has the same bytes: of the program, and of the library in a process that
// writes commas.

#include <catch2/catch.hpp>

#include <clocale>
#include <cstdlib>
#include <locale>
#include <sstream>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/document/write.hpp>
#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/report/page/sheet.hpp>
#include <ringfill/report/text/quote_text.hpp>
#include <ringfill/report/text/take_text.hpp>
#include <ringfill/report/text/working_text.hpp>

#include "run_program.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr const char* comma_locale = "de_DE.UTF-8";

/// Makes the locale in the workspace: few machines have it ready.
std::string locale_folder(const Workspace& workspace) {
    const std::string command =
        fmt::format("localedef -i de_DE -f UTF-8 '{}' >/dev/null", workspace.path(comma_locale));
    REQUIRE(std::system(command.c_str()) == 0);
    return workspace.folder().string();
}

/// Commas and digit groups, in a stream too that does not ask the system.
class Commas : public std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

/// The whole process writes commas as long as this lives.
class CommaProcess {
  public:
    explicit CommaProcess(const std::string& folder) : before_(std::locale(std::locale(), new Commas)) {
        setenv("LOCPATH", folder.c_str(), 1);
        before_ = std::locale::global(before_);
        REQUIRE(std::setlocale(LC_ALL, comma_locale) != nullptr);
    }
    CommaProcess(const CommaProcess&) = delete;
    CommaProcess& operator=(const CommaProcess&) = delete;
    ~CommaProcess() {
        std::locale::global(before_);
        std::setlocale(LC_ALL, "C");
        unsetenv("LOCPATH");
    }

  private:
    std::locale before_;
};

std::vector<std::string> answers(const std::string& job_text) {
    const Shop fresh = read_shop(Shelf{{RINGFILL_TABLES}}, {RINGFILL_PLUGIN_FOLDER});
    const Job job = job_from(job_text);
    const Plan made = plan(job, fresh);
    return {
        write_json(plan_document(made)), take_text(made, {}), working_text(made, {}), quote_text(made, {}),
        sheet(job, made, fresh.sources), take_csv(made),      passes_csv(made),       quote_csv(made)};
}

} // namespace

TEST_CASE("the program prints the same bytes where a comma divides decimals") {
    const Workspace workspace;
    const std::string folder = locale_folder(workspace);
    for (const char* job : {"every-field.json", "ferry-ramp-hinges.json"}) {
        workspace.write("job.json", content_of(std::string(RINGFILL_ROOT "/cli/demo/") + job));
        for (const std::vector<std::string>& words : {std::vector<std::string>{"take"},
                                                      {"take", "--json"},
                                                      {"take", "--csv"},
                                                      {"take", "--working"},
                                                      {"passes"},
                                                      {"heat"},
                                                      {"boring"},
                                                      {"day"},
                                                      {"cautions"},
                                                      {"sheet"},
                                                      {"quote"},
                                                      {"quote", "--csv"}}) {
            INFO(job << ' ' << fmt::format("{}", fmt::join(words, " ")));
            Call call;
            call.words = words;
            call.words.push_back("job.json");
            call.environment = {{"LC_ALL", "C"}};
            const Outcome plain = run(workspace, call);
            call.environment = {{"LC_ALL", comma_locale}, {"LOCPATH", folder}};
            const Outcome comma = run(workspace, call);
            CHECK(plain.status == 0);
            CHECK(comma.status == 0);
            CHECK(plain.out.size() > 100);
            CHECK(comma.out == plain.out);
        }
    }
}

TEST_CASE("the library reads and writes the same bytes in a process that writes commas") {
    const Workspace workspace;
    const std::string folder = locale_folder(workspace);
    const std::string job = content_of(RINGFILL_ROOT "/cli/demo/every-field.json");
    const std::vector<std::string> plain = answers(job);
    std::vector<std::string> comma;
    {
        const CommaProcess process(folder);
        REQUIRE(std::string(std::localeconv()->decimal_point) == ","); // else nothing would be tried
        std::ostringstream stream;
        stream << 1234.5;
        REQUIRE(stream.str() == "1.234,5");
        comma = answers(job);
    }
    REQUIRE(comma.size() == plain.size());
    for (std::size_t i = 0; i < plain.size(); ++i) {
        INFO(i);
        CHECK(comma[i] == plain[i]);
    }
    CHECK(std::string(std::localeconv()->decimal_point) == ".");
}
