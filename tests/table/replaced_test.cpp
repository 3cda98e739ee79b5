#include <catch2/catch.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/table/replaced.hpp>

using namespace ringfill;

namespace {

Document file(const std::string& name, const std::string& members) {
    return parse(name, R"({"format": "f", "description": "d", )" + members + "}", Origin::table);
}

/// "table row: field, field" of each row that is replaced.
std::vector<std::string> named(const std::vector<ReplacedRow>& rows) {
    std::vector<std::string> all;
    for (const ReplacedRow& one : rows) {
        all.push_back(one.table + ' ' + one.row + ':');
        for (const std::string& field : one.fields)
            all.back() += ' ' + field;
    }
    return all;
}

/// "field ours theirs" of each figure that is less careful.
std::vector<std::string> lowered(const std::string& ours, const std::string& theirs) {
    std::vector<std::string> all;
    const auto written = [](const Value& value) {
        const std::string line = write_json_line(value);
        return line.substr(0, line.size() - 1);
    };
    for (const LoweredFigure& one :
         lowered_figures("row", parse("a", ours, Origin::table).root, parse("b", theirs, Origin::table).root))
        all.push_back(one.field + ' ' + written(one.ours) + ' ' + written(one.theirs));
    return all;
}

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("rows that a later file replaces are named with the fields that differ") {
    const Document ours =
        file("ours/packs.json", R"("wire": {"a": {"kg": [1, "s"], "note": "n"}, "b": {"kg": [2, "s"]}})");
    const Document theirs =
        file("mine/packs.json",
             R"("wire": {"a": {"kg": [3, "s"], "stocked": false}, "b": {"kg": [2, "s"]}, "c": {}})");
    const auto rows = replaced_rows({ours, theirs});
    CHECK(named(rows) == Lines{"packs.wire a: kg note stocked"});
    CHECK(rows.front().file == "mine/packs.json");
    CHECK(rows.front().family.empty());
    CHECK(replaced_rows({ours}).empty());
    CHECK(replaced_rows({ours, ours}).empty());
    CHECK(named(replaced_rows(
              {file("o/cutting.json", R"("cutting": {"x": [1, "s"]}, "bars": {"y": [1, "s"]}, "z": 1)"),
               file("m/cutting.json", R"("cutting": {"x": [2, "s"]}, "bars": {"y": [2, "s"]}, "z": 2)")})) ==
          Lines{"cutting x: x", "cutting.bars y: y", "cutting z: z"});
}

TEST_CASE("what is no row of a table is not taken for one") {
    const std::string own =
        R"("sources": {"k": {"title": "t"}}, "usual": {"bases": {"x": 1}}, "has_rules": true)";
    const std::string other =
        R"("sources": {"k": {"title": "u"}}, "usual": {"bases": {"x": 2}}, "has_rules": false)";
    CHECK(replaced_rows({file("o.json", own), file("m.json", other)}).empty());
}

TEST_CASE("a list that is no table at all replaces nothing") {
    CHECK(replaced_rows({file("o.json", R"("wire": {"a": 1})"), parse("m.json", "[1]", Origin::table)})
              .empty());
    CHECK(replaced_rows({parse("o.json", "[1]", Origin::table), file("m.json", R"("wire": {"a": 1})")})
              .empty());
}

TEST_CASE("a temperature is less careful where it is higher, gas and hydrogen where they are lower") {
    CHECK(lowered(R"({"interpass_max_degC": [350, "s"]})", R"({"interpass_max_degC": [700, "s"]})") ==
          Lines{"interpass_max_degC 350 700"});
    CHECK(lowered(R"({"interpass_max_degC": [350, "s"]})", R"({"interpass_max_degC": [300, "s"]})").empty());
    CHECK(lowered(R"({"interpass_max_degC": [350, "s"]})", "{}") == Lines{"interpass_max_degC 350 null"});
    CHECK(lowered(R"({"flow_L_min_per_mm": [12, "s"]})", R"({"flow_L_min_per_mm": [8, "s"]})") ==
          Lines{"flow_L_min_per_mm 12 8"});
    CHECK(lowered(R"({"hydrogen_ml_100g": [8, "s"]})", R"({"hydrogen_ml_100g": [2, "s"]})") ==
          Lines{"hydrogen_ml_100g 8 2"});
    CHECK(lowered(R"({"cool_to_degC": [100, 150, "s"]})", R"({"cool_to_degC": [100, 250, "s"]})") ==
          Lines{"cool_to_degC 150 250"});
    CHECK(lowered(R"({"composition_pct": {"C": [0.5, "s"], "Mn": [1, "s"]}})",
                  R"({"composition_pct": {"C": [0.2, "s"], "Mn": [1.2, "s"]}})") ==
          Lines{"composition_pct.C 0.5 0.2"});
}

TEST_CASE("a flag that spares care is told, one that asks for it not") {
    CHECK(lowered("{}", R"({"never_quenched": true})") == Lines{"never_quenched false true"});
    CHECK(lowered(R"({"never_quenched": true})", "{}").empty());
    CHECK(lowered(R"({"hardenable": true})", "{}") == Lines{"hardenable true false"});
    CHECK(lowered(R"({"sprays": false})", "{}") == Lines{"sprays false true"});
}

TEST_CASE("steps of preheat are compared wherever they may differ, and the widest gap is told") {
    const std::string ours =
        R"({"practice": {"rows": [{"up_to_mm": [25, "s"], "practice_degC": [100, 150, "s"]},
                                                       {"practice_degC": [200, 260, "s"]}]}})";
    CHECK(lowered(ours, ours).empty());
    CHECK(lowered(ours, R"({"practice": {"rows": [{"practice_degC": [20, 20, "s"]}]}})") ==
          Lines{"practice.rows 260 20"});
    CHECK(lowered(ours, R"({"practice": {"rows": [{"up_to_mm": [30, "s"], "practice_degC": [100, 150, "s"]},
                                                  {"practice_degC": [200, 260, "s"]}]}})") ==
          Lines{"practice.rows 260 150"});
    CHECK(lowered(ours, R"({"practice": {"rows": [{"practice_degC": [200, 260, "s"]}]}})").empty());
    CHECK(lowered(ours, "{}") == Lines{"practice.rows 150 null"});
    CHECK(
        lowered(
            R"({"rows": [{"carbon_up_to_pct": [0.3, "s"], "minimum_degC": [10, "s"]}, {"minimum_degC": [80, "s"]}]})",
            R"({"rows": [{"minimum_degF": [50, "s"]}]})") == Lines{"rows 80 10"});
    CHECK(lowered(R"({"rows": [{"minimum_degC": [80, "s"], "maximum_degC": [250, "s"]}]})",
                  R"({"rows": [{"minimum_degC": [80, "s"], "maximum_degC": [300, "s"]}]})") ==
          Lines{"rows 250 300"});
}

TEST_CASE("a maximum by thickness and by document is compared for each") {
    const std::string ours =
        R"({"interpass_max_degC": [{"up_to_mm": 40, "value": 250}, {"value": 200}, {"value": 150, "document": "D"}]})";
    CHECK(lowered(ours, ours).empty());
    CHECK(lowered(ours, R"({"interpass_max_degC": [{"value": 250}, {"value": 150, "document": "D"}]})") ==
          Lines{"interpass_max_degC 200 250"});
}

TEST_CASE("a caution that applies less often, and a limit of the air that is higher, are told") {
    CHECK(lowered(R"({"if": {"wet": {}, "dust": {}}})", R"({"if": {"wet": {}}})") ==
          Lines{R"(if.dust "dust" null)"});
    CHECK(lowered(R"({"if": {"wet": {}}})", R"({"if": {"wet": {}, "dust": {}}})").empty());
    CHECK(lowered(R"({"if": {"arc_A": {"from": [60, "s"]}}})", R"({"if": {"arc_A": {"from": [90, "s"]}}})") ==
          Lines{"if.arc_A.from 60 90"});
    CHECK(lowered(R"({"if": {"arc_A": {"from": [60, "s"]}}})",
                  R"({"if": {"arc_A": {"from": [60, "s"], "under": [90, "s"]}}})") ==
          Lines{"if.arc_A.under null 90"});
    CHECK(lowered(R"({"limits": [{"mg_m3": [5, "s"]}]})", R"({"limits": [{"mg_m3": [9, "s"]}]})") ==
          Lines{"limits.mg_m3 5 9"});
}

TEST_CASE("a verdict that is milder and a table of preheat that is gone are told") {
    CHECK(lowered(R"({"verdict": "not_advised"})", R"({"verdict": "recommended"})") ==
          Lines{R"(verdict "not_advised" "recommended")"});
    CHECK(lowered(R"({"verdict": "recommended"})", R"({"verdict": "not_advised"})").empty());
    CHECK(lowered(R"({"preheat_groups": ["A", "B"]})", R"({"preheat_groups": ["B"]})") ==
          Lines{R"(preheat_groups "A" null)"});
    CHECK(lowered(R"({"listed_in": [["A", "s"]]})", R"({"listed_in": []})") ==
          Lines{R"(listed_in "A" null)"});
}

TEST_CASE("a grade's own maximum is held against that of its kind, its practice against that of the grade it "
          "goes by") {
    const std::string kinds =
        R"("heat_groups": {"k": {"interpass_max_degC": [{"value": 300}, {"value": 250, "document": "D"}]}},)";
    const Document ours = file("steel.json", kinds + R"("bases": {
        "a": {"group": "k", "practice": {"rows": [{"practice_degC": [100, 150, "s"]}]}},
        "b": {"group": "k", "practice_of": "a"}})");
    const auto figures = [&](const std::string& bases) {
        Lines all;
        for (const ReplacedRow& row : replaced_rows({ours, file("m/steel.json", bases)}, "steel"))
            for (const LoweredFigure& one : row.lowered)
                all.push_back(row.row + ' ' + one.field);
        return all;
    };
    CHECK(
        figures(R"("bases": {"b": {"group": "k", "practice_of": "a", "interpass_max_degC": [700, "s"]}})") ==
        Lines{"b interpass_max_degC"});
    CHECK(figures(R"("bases": {"b": {"group": "k", "practice_of": "a", "interpass_max_degC": [300, "s"]}})")
              .empty());
    CHECK(
        figures(
            R"("bases": {"b": {"group": "k", "practice": {"rows": [{"practice_degC": [20, 20, "s"]}]}}})") ==
        Lines{"b practice.rows"});
}
