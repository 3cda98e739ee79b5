#include <catch2/catch.hpp>

#include <string>

#include <ringfill/document/document.hpp>
#include <ringfill/report/json/json.hpp>

using namespace ringfill;

namespace {

Document document_of(std::size_t line, std::optional<Origin> origin, const std::vector<Fault>& faults) {
    return {"faults", "", fault_document(line, origin, faults)};
}

std::string origin_of(std::optional<Origin> origin) {
    const Document document = document_of(1, origin, {{}});
    return *value_at(document, "origin").text();
}

} // namespace

TEST_CASE("who can put a fault right is told by a word, a fault of the program too") {
    CHECK(origin_of(Origin::job) == "job");
    CHECK(origin_of(Origin::command_line) == "command_line");
    CHECK(origin_of(Origin::table) == "table");
    CHECK(origin_of(Origin::file) == "file");
    CHECK(origin_of(std::nullopt) == "program");
}

TEST_CASE("a fault is told part by part and as a sentence, without the line that its sender has") {
    const Fault fault{
        {"jobs", 3, 17, "bores[1].stock"}, "\"1\"", "has no unit", "write \"1 mm\"", "    x\n    ^"};
    const Document document = document_of(3, Origin::job, {fault});
    CHECK(*value_at(document, "format").text() == "ringfill-fault/1");
    CHECK(*value_at(document, "line").number() == 3);
    REQUIRE(value_at(document, "faults").list()->size() == 1);
    CHECK(*value_at(document, "faults[0].path").text() == "bores[1].stock");
    CHECK(*value_at(document, "faults[0].column").number() == 17);
    CHECK(*value_at(document, "faults[0].value").text() == "\"1\"");
    CHECK(*value_at(document, "faults[0].reason").text() == "has no unit");
    CHECK(*value_at(document, "faults[0].remedy").text() == "write \"1 mm\"");
    CHECK(*value_at(document, "faults[0].text").text() ==
          "jobs:3:17: bores[1].stock: \"1\" has no unit; write \"1 mm\"");
}

TEST_CASE("what is not known of a fault is left out") {
    const Document document = document_of(1, std::nullopt, {{{}, {}, "broke off", {}, {}}});
    const Value& fault = value_at(document, "faults").list()->front();
    REQUIRE(fault.object()->size() == 2);
    CHECK(fault.object()->at(0).name == "reason");
    CHECK(fault.object()->at(1).name == "text");
    CHECK(*fault.object()->at(1).value.text() == "broke off");
}
