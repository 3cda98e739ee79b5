#include <catch2/catch.hpp>

#include <ringfill/fault/fault.hpp>

using namespace ringfill;

namespace {

Fault no_unit() {
    return {{"job.json", 14, 22, "bores[1].worn.diameter"},
            "\"90.4\"",
            "has no unit",
            "write \"90.4 mm\" or \"3.559 in\"",
            "    \"90.4\"\n    ^"};
}

} // namespace

TEST_CASE("a fault says where, what, why and what to do, then shows the line") {
    CHECK(to_string(no_unit()) ==
          "job.json:14:22: bores[1].worn.diameter: \"90.4\" has no unit; write \"90.4 mm\" or "
          "\"3.559 in\"\n    \"90.4\"\n    ^");
}

TEST_CASE("parts that a fault lacks leave no trace") {
    CHECK(to_string(fault_in_file("job.json", "is larger than 10 bytes", "split it")) ==
          "job.json: is larger than 10 bytes; split it");
    CHECK(to_string(fault_in_file("job.json", "is larger than 10 bytes", "")) ==
          "job.json: is larger than 10 bytes");
    CHECK(to_string(fault_at_path("title", "\"\"", "is empty", "name the job")) ==
          "title: \"\" is empty; name the job");
    CHECK(to_string(fault_at_path("", "", "is empty", "name the job")) == "is empty; name the job");
}

TEST_CASE("the exception carries every fault in the order of the file, and who can put it right") {
    Fault earlier = fault_at_path("bores[0]", "7", "is broken", "");
    earlier.place.line = 3;
    earlier.place.column = 5;
    const Faulty two(Origin::table, {no_unit(), earlier});
    CHECK(two.origin() == Origin::table);
    CHECK(two.faults().size() == 2);
    CHECK(std::string(two.what()) == "3:5: bores[0]: 7 is broken\n" + to_string(no_unit()));
    CHECK(std::string(Faulty(Origin::file, fault_in_file("b", "is broken", "")).what()) == "b: is broken");
}

TEST_CASE("only faults are thrown") {
    CHECK_NOTHROW(refuse_if_any(Origin::job, {}));
    CHECK_THROWS_AS(refuse_if_any(Origin::job, {no_unit()}), Faulty);
}
