#include <cmath>

#include <catch2/catch.hpp>

#include <ringfill/document/document.hpp>
#include <ringfill/report/json/json.hpp>

#include "report/plan_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinRel;

namespace {

using Names = std::vector<std::string>;

Names names_of(const Value& object) {
    Names names;
    REQUIRE(object.object());
    for (const Member& member : *object.object())
        names.push_back(member.name);
    return names;
}

const Value& at(const Document& document, std::string_view path) {
    return value_at(document, path);
}

Document document_of(const Plan& plan) {
    return {"plan", "", plan_document(plan)};
}

/// A bore with everything that makes a block of its own.
const std::string everything = "\"boss_diameter\": \"180 mm\", \"faces\": [{ \"inner\": \"95 mm\", "
                               "\"outer\": \"150 mm\", \"build\": \"2 mm\" }], "
                               "\"grooves\": [{ \"diameter\": \"98 mm\", \"width\": \"4 mm\" }],";

/// Calls for each value of a tree.
template <class Visit>
void each_value(const Value& value, const std::string& path, Visit visit) {
    visit(value, path);
    if (const auto* list = value.list())
        for (std::size_t i = 0; i < list->size(); ++i)
            each_value((*list)[i], element_path(path, i), visit);
    if (const auto* members = value.object())
        for (const Member& member : *members)
            each_value(member.value, member_path(path, member.name), visit);
}

} // namespace

TEST_CASE("the result has its members in the order of the format") {
    const Document result = document_of(plan_of(small_job(everything)));
    CHECK(names_of(result.root) == Names{"format", "title", "doubts", "tables", "bores", "totals",
                                         "fire_watch", "take", "cautions", "notes", "assumed", "sources",
                                         "working"});
    CHECK(*at(result, "format").text() == "ringfill-plan/1");
    CHECK(*at(result, "title").text() == "Stick pins, drainage ship 2");
    CHECK(names_of(at(result, "totals")) == Names{"laid_kg", "wire_kg", "arc_s", "gas_l"});
}

TEST_CASE("a bore has its members in the order of the format") {
    const Document result = document_of(plan_of(small_job(everything)));
    CHECK(names_of(at(result, "bores[0]")) == Names{"name", "count", "procedure", "survey", "build", "bead",
                                                    "layers", "faces", "grooves", "metal", "suits",
                                                    "dilution", "heat", "boring"});
    CHECK(
        names_of(at(result, "bores[0].boring")) ==
        Names{"deposit",     "tool",    "rpm",         "computed_rpm",    "cutting_speed_m_min", "feed_mm",
              "feed_mm_min", "set_ups", "stock_mm",    "valley_stock_mm", "final_diameter_mm",   "cuts",
              "facing",      "grooves", "standing",    "skim_s",          "cutting_s",           "standing_s",
              "time_s",      "edges",   "edges_rough", "edges_finish",    "roughness",           "gauge"});
    CHECK(names_of(at(result, "bores[0].boring.cuts[0]")) ==
          Names{"kind", "depth_mm", "diameter_from_mm", "diameter_to_mm", "rpm", "feed_mm", "time_s"});

    CHECK(names_of(at(result, "bores[0].survey")) == Names{"largest_radius_mm", "largest_radius_clock_deg",
                                                           "smallest_radius_mm", "smallest_radius_clock_deg",
                                                           "worn_volume_mm3"});
    CHECK(names_of(at(result, "bores[0].build")) ==
          Names{"skim_diameter_mm", "skim_volume_mm3", "wall_mm", "weld_to_diameter_mm", "build_mm",
                "ring_volume_mm3", "finished_weld_mm", "extra_stock_mm"});
    CHECK(names_of(at(result, "bores[0].bead")) ==
          Names{"section_mm2", "width_mm", "crown_mm", "pitch_mm", "valley_mm", "scale", "travel_mm_min"});
    CHECK(names_of(at(result, "bores[0].layers[0]")) == Names{"layer", "radius_before_mm", "radius_after_mm",
                                                              "rings", "path_mm", "laid_kg", "arc_s",
                                                              "torch_rpm"});
    CHECK(names_of(at(result, "bores[0].faces[0]")) ==
          Names{"layers", "rings", "scale", "extra_build_mm", "pitch_mm", "travel_mm_min", "torch_first_rpm",
                "torch_last_rpm", "path_mm", "laid_kg", "arc_s"});
    CHECK(names_of(at(result, "bores[0].grooves[0]")) ==
          Names{"volume_mm3", "path_mm", "laid_kg", "arc_s", "travel_mm_min", "torch_rpm"});
    CHECK(names_of(at(result, "bores[0].metal")) ==
          Names{"laid_kg", "kept_kg", "kept_share", "wire_kg", "arc_s", "starts", "deposition_kg_h"});
}

TEST_CASE("what to take, cautions, assumed values and workings have their members in order") {
    const Document result = document_of(plan_of(small_job(everything)));
    CHECK(names_of(at(result, "take[0]")) ==
          Names{"item", "need", "reserve", "unit", "cover", "supplied", "spare", "why", "source", "id"});
    CHECK(names_of(at(result, "take[0].cover[0]")) == Names{"pack", "count"});
    CHECK(names_of(at(result, "cautions[0]")) ==
          Names{"about", "when", "applies", "text", "because", "source"});
    CHECK(names_of(at(result, "assumed[0]")) == Names{"field", "value", "source"});
    for (const Value& working : *at(result, "working").list()) {
        Names expected{"figure", "formula", "inputs", "value", "unit", "source"};
        if (!working.find("unit")) // a plain number
            expected.erase(expected.begin() + 4);
        CHECK(names_of(working) == expected);
    }
    CHECK_FALSE(at(result, "working").list()->empty());
}

TEST_CASE("what a job does not have is absent, and the notes say why") {
    const Plan plan = plan_of(small_job());
    const Document result = document_of(plan);
    CHECK_FALSE(at(result, "bores[0].build").find("wall_mm"));
    for (const char* name : {"faces", "grooves"})
        CHECK_FALSE(at(result, "bores[0]").find(name));
    std::string notes;
    for (const Value& note : *at(result, "notes").list())
        notes += *note.text() + "\n";
    CHECK_THAT(notes, Contains("pin left: without boss_diameter the wall is not known"));
}

TEST_CASE("blocks that this library does not work out are absent and named in the notes") {
    const Document result = document_of(plan_of(small_job(everything)));
    std::string notes;
    for (const Value& note : *at(result, "notes").list())
        notes += *note.text() + "\n";
    CHECK_FALSE(at(result, "bores[0]").find("time"));
    CHECK_FALSE(result.root.find("day"));
    CHECK_THAT(notes, Contains("day: left out, because the heat balance of pin left is left out."));
    CHECK_FALSE(result.root.find("quote"));
    CHECK_FALSE(at(result, "totals").find("elapsed_s"));
    CHECK_THAT(notes, Contains("quote:"));
}

TEST_CASE("a bore welded as it is says where its weld is thinnest") {
    const Document result = document_of(plan_of(small_job("\"skim\": \"none\",")));
    CHECK(names_of(at(result, "bores[0].build")) ==
          Names{"skim_diameter_mm", "skim_volume_mm3", "weld_to_diameter_mm", "build_mm", "ring_volume_mm3",
                "finished_weld_mm", "finished_weld_clock_deg", "extra_stock_mm"});
    CHECK(*at(result, "bores[0].build.skim_volume_mm3").number() == 0);
}

TEST_CASE("nothing is null, and every number is finite") {
    std::size_t numbers = 0;
    each_value(plan_document(plan_of(small_job(everything))), "",
               [&](const Value& value, const std::string& path) {
                   CAPTURE(path);
                   CHECK_FALSE(std::holds_alternative<std::nullptr_t>(value.held));
                   if (value.number()) {
                       ++numbers;
                       CHECK(std::isfinite(*value.number()));
                   }
               });
    CHECK(numbers > 60);
}

TEST_CASE("the figures are those of the plan in the units of their names") {
    const Plan plan = plan_of(small_job(everything));
    const Document result = document_of(plan);
    const BorePlan& bore = plan.bores.front();
    // Factors by definition: 1e3 mm a metre, 1e6 mm2, 1e9 mm3, 60 s a minute, 3600 s an hour, 1e3 L a cubic
    // metre.
    const auto check = [&](const std::string& path, double expected) {
        CAPTURE(path);
        REQUIRE(at(result, path).number());
        CHECK_THAT(*at(result, path).number(), WithinRel(expected, 1e-12));
    };
    check("bores[0].survey.largest_radius_mm", bore.survey.largest.radius.value() * 1e3);
    check("bores[0].survey.worn_volume_mm3", bore.survey.worn_volume.value() * 1e9);
    check("bores[0].build.skim_diameter_mm", 94.4); // 93.4 and 0.5 on each side
    check("bores[0].build.wall_mm", 42.8);          // (180 - 94.4)/2
    check("bores[0].build.weld_to_diameter_mm", 86);
    check("bores[0].build.build_mm", 4.2);
    check("bores[0].bead.section_mm2", bore.bead.section.value() * 1e6);
    check("bores[0].bead.travel_mm_min", bore.bead.travel.value() * 60e3);
    check("bores[0].layers[0].torch_rpm", bore.layers.front().torch.value() * 60);
    check("bores[0].layers[1].laid_kg", bore.layers[1].laid.value());
    check("bores[0].metal.deposition_kg_h", bore.deposition.rate.value() * 3600);
    check("totals.gas_l", plan.totals.gas.value() * 1e3);
    check("totals.arc_s", plan.totals.arc.value());
}

TEST_CASE("the result is in metric units whatever the job's units are") {
    const std::string text = small_job();
    std::string inch = text;
    inch.replace(inch.find("\"units\": \"mm\""), 13, "\"units\": \"inch\"");
    const Document metric_result = document_of(plan_of(text));
    const Document inch_result = document_of(plan_of(inch));
    for (const char* path : {"bores[0].build.skim_diameter_mm", "bores[0].metal.wire_kg", "totals.gas_l"})
        CHECK(*at(inch_result, path).number() == *at(metric_result, path).number());
}
