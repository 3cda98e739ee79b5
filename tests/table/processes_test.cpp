#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/processes.hpp>

#include "document/fault_words.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}}};

std::string file_of(const std::string& members) {
    return fmt::format("{{\"format\": \"ringfill-processes/1\", \"description\": \"d\",\n{}}}", members);
}

Processes processes_of(const std::string& rows) {
    return read_processes(
        {parse("processes.json", file_of(R"("base_left": [0.05, "practice"], "processes": {)" + rows + "}"),
               Origin::table)},
        known);
}

std::string first_line(const std::string& members) {
    const std::string whole = refusal(
        Origin::table, [&] { read_processes({parse("t.json", file_of(members), Origin::table)}, known); });
    return whole.substr(0, whole.find('\n'));
}

const ProcessRow* dilution_row(const Processes& table, std::string_view process, std::string_view transfer,
                               std::string_view gas) {
    return closest_row(table, process, transfer, gas,
                       [](const ProcessRow& row) { return row.dilution.has_value(); });
}

const ProcessRow* efficiency_row(const Processes& table, std::string_view process, std::string_view transfer,
                                 std::string_view gas) {
    return closest_row(table, process, transfer, gas,
                       [](const ProcessRow& row) { return row.efficiency.has_value(); });
}

const std::string rows = R"(
    "all": { "process": "gas_metal_arc", "efficiency_range": [0.9, 0.99, "practice"], "dilution": [0.25, "practice"] },
    "spray": { "process": "gas_metal_arc", "transfer": "spray", "dilution": [0.3, "practice"] },
    "dioxide": { "process": "gas_metal_arc", "gas": "C1", "efficiency_range": [0.88, 0.93, "practice"] },
    "stick": { "process": "manual_metal_arc" })";

} // namespace

TEST_CASE("the row that says most of a process and has the figure is taken") {
    const Processes table = processes_of(rows);
    CHECK(dilution_row(table, "gas_metal_arc", "short", "M21")->name == "all");
    CHECK(dilution_row(table, "gas_metal_arc", "spray", "M21")->name == "spray");
    CHECK(dilution_row(table, "gas_metal_arc", "spray", "C1")->name == "spray"); // the gas has no dilution
    CHECK(efficiency_row(table, "gas_metal_arc", "spray", "M21")->name == "all");
    CHECK(efficiency_row(table, "gas_metal_arc", "spray", "C1")->name == "dioxide");
    CHECK(efficiency_row(table, "manual_metal_arc", "", "") == nullptr);
    CHECK(dilution_row(table, "torch_brazing", "", "") == nullptr);
    CHECK(table.base_left.value == 0.05);
}

TEST_CASE("a table of processes that cannot be is refused") {
    CHECK(first_line(R"("processes": {})") ==
          R"(t.json:1:1: base_left: is missing; write "base_left": [0.05, "practice"])");
    CHECK(
        first_line(R"("base_left": [0.05, "practice"], "processes": { "a": { "process": "gas_metal" } })") ==
        R"(t.json:2:67: processes.a.process: "gas_metal" is not a word used here; did you mean "gas_metal_arc"?)");
    CHECK(first_line(R"("base_left": [0.05, "practice"], "processes": { "a": { "process": "gas_metal_arc",
"dilution": [0.4, "practice"], "dilution_range": [0.1, 0.3, "practice"] } })") ==
          "t.json:3:13: processes.a.dilution: lies outside its range; widen the range or correct the figure");
    CHECK(first_line(R"("base_left": [1, "practice"])") ==
          "t.json:2:15: base_left: 1" + out_of_range("over 0 and at most 0.9"));
}
