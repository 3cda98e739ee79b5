#include <catch2/catch.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/schema_of.hpp>
#include <ringfill/table/cautions.hpp>

using namespace ringfill;

namespace {

/// The schema of what is written by such an object, on one line.
template <class Object>
std::string schema_line(const Object&) {
    return write_json_line(SchemaOf<Object>::made());
}

} // namespace

TEST_CASE("a schema tells kind, unit and words of each member, and which are always there") {
    CHECK(schema_line(object(member<"format">(Always<"plan/1">()), member<"count">(1), member<"share">(0.5),
                             member<"known">(true), member<"name">("pin"),
                             member<"wall_mm">(std::optional<Length>()), member<"when">(When::after))) ==
          R"({"type":"object","properties":{"format":{"const":"plan/1"},"count":{"type":"integer"},)"
          R"("share":{"type":"number"},"known":{"type":"boolean"},"name":{"type":"string"},)"
          R"("wall_mm":{"type":"number","description":"in mm"},)"
          R"("when":{"enum":["before","during","after"]}},)"
          R"("required":["format","count","share","known","name","when"],"additionalProperties":false})"
          "\n");
}

TEST_CASE("a schema tells what lists and objects hold") {
    const std::vector<std::pair<std::string, double>> figures{{"CET", 0.4}};
    using Named = std::pair<std::string, double>;
    CHECK(
        schema_line(object(member<"s">(std::vector<Time>{}),
                           member<"all">(list_of(
                               figures, [](const Named& one) { return object(member<"name">(one.first)); })),
                           member<"values">(by_name(figures, &Named::first, &Named::second)))) ==
        R"({"type":"object","properties":{"s":{"type":"array","items":{"type":"number"},)"
        R"("description":"in s"},"all":{"type":"array","items":{"type":"object","properties":)"
        R"({"name":{"type":"string"}},"required":["name"],"additionalProperties":false}},)"
        R"("values":{"type":"object","additionalProperties":{"type":"number"}}},)"
        R"("required":["s","all","values"],"additionalProperties":false})"
        "\n");
}

TEST_CASE("members that stand in the place of an object that may be absent may be absent too") {
    const auto more = [](double one) { return object(member<"b">(one), member<"c">(one)); };
    CHECK(schema_line(
              object(member<"a">(1.0), given(std::optional<double>(), more), object(member<"d">(1.0)))) ==
          R"({"type":"object","properties":{"a":{"type":"number"},"b":{"type":"number"},)"
          R"("c":{"type":"number"},"d":{"type":"number"}},"required":["a","d"],)"
          R"("additionalProperties":false})"
          "\n");
}
