#include <catch2/catch.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/standing_times.hpp>

#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}},
                            {"arc-share-study", {"study of arc time", "-", "-", "paper", "read"}}};

Document file_of(const std::string& times) {
    return parse(
        "t.json",
        fmt::format(
            "{{\"format\": \"ringfill-standing_times/1\", \"description\": \"d\", \"times\": {{{}}}}}",
            times),
        Origin::table);
}

std::vector<Document> own() {
    return table_files(Shelf{{RINGFILL_TABLES}}, "standing_times.json");
}

std::string refused(const std::string& times) {
    std::vector<Document> files = own();
    files.push_back(file_of(times));
    std::string text = refusal(Origin::table, [&] { read_standing_times(files, known); });
    return text.substr(0, text.find('\n'));
}

} // namespace

TEST_CASE("the product's table holds every step, within its range, and a later file corrects one") {
    std::vector<Document> files = own();
    const auto times = read_standing_times(files, known);
    CHECK(times.size() == std::size(standing_steps));
    for (const StepTime& one : times)
        CHECK(one.range.has_value());
    CHECK(step_time(times, "align").time.value.value() == 90 * 60);
    files.push_back(file_of(R"("align": {"minutes": [60, "practice"]})"));
    const auto corrected = read_standing_times(files, known);
    CHECK(corrected.size() == times.size());
    CHECK(step_time(corrected, "align").time.value.value() == 60 * 60);
    CHECK_FALSE(step_time(corrected, "align").range);
}

TEST_CASE("what is no step, or outside its own range, or missing, is refused") {
    CHECK(refused(R"("algn": {"minutes": [60, "practice"]})") ==
          "t.json:1:79: times.algn: is no step of a day; did you mean \"align\"?");
    CHECK(refused(R"("align": {"minutes": [10, "practice"], "range_min": [20, 90, "practice"]})") ==
          "t.json:1:92: times.align.minutes: lies outside its own range_min; put one of the two right");
    const std::string missing = refusal(Origin::table, [] {
        read_standing_times({file_of(R"("align": {"minutes": [60, "practice"]})")}, known);
    });
    CHECK(missing.find("times.arrive: is missing; write it with its source") != std::string::npos);
}
