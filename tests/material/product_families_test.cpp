#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/material/family.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;

namespace {

/// The families of the product as their tables stand, without the rules of a plugin.
const std::vector<Family>& families() {
    static const std::vector<Family> read = [] {
        const Shelf own{{RINGFILL_TABLES}};
        const Bibliography sources = read_sources(table_files(own, "sources.json"));
        std::vector<Family> found;
        for (const std::string& name : family_names(own))
            found.push_back(read_family(name, table_files(own, "families/" + name + ".json"), sources));
        return found;
    }();
    return read;
}

const Base& base(const std::string& family, const std::string& name) {
    for (const Family& one : families())
        for (const Base& metal : one.bases)
            if (one.name == family && metal.name == name)
                return metal;
    FAIL("no base metal " << family << '/' << name);
    throw 0; // FAIL has thrown
}

std::vector<double> minima_degC(const PreheatGroup& group) {
    std::vector<double> found;
    for (const PreheatRow& row : group.rows)
        found.push_back(deg_c(row.minimum.value));
    return found;
}

} // namespace

TEST_CASE("every family of the product reads, and every value has its source") {
    REQUIRE(families().size() >= 2);
    for (const Family& family : families()) {
        CHECK_FALSE(family.fillers.empty());
        for (const Base& one : family.bases) {
            INFO(family.name << '/' << one.name);
            CHECK(one.name.find('/') == std::string::npos); // a job names it family/grade
            CHECK(family.sources.count(one.density.source) == 1);
        }
        for (const Filler& one : family.fillers) {
            INFO(family.name << '/' << one.name);
            CHECK(family.sources.count(one.efficiency.source) == 1);
            CHECK(one.efficiency.value <= 1);
            CHECK_FALSE(one.sizes.empty());
        }
    }
}

TEST_CASE("in a table of preheat a thicker wall never asks for less") {
    const auto check = [](const PreheatGroup& group) {
        INFO(group.name);
        CHECK(std::is_sorted(
            group.rows.begin(), group.rows.end(),
            [](const PreheatRow& a, const PreheatRow& b) { return a.minimum.value < b.minimum.value; }));
        for (std::size_t i = 1; i < group.rows.size(); ++i)
            if (group.rows[i].up_to && group.rows[i - 1].up_to)
                CHECK(group.rows[i].up_to->value > group.rows[i - 1].up_to->value);
    };
    std::size_t judged = 0;
    for (const Family& family : families()) {
        for (const PreheatGroup& group : family.preheat_groups) {
            check(group);
            ++judged;
        }
        for (const Base& one : family.bases)
            if (one.practice)
                check(*one.practice);
    }
    CHECK(judged > 20);
}

TEST_CASE("the tables of documents hold for every wall") {
    for (const Family& family : families())
        for (const PreheatGroup& group : family.preheat_groups) {
            INFO(group.name);
            const PreheatRow& last = group.rows.back();
            CHECK_FALSE((last.up_to || last.carbon_up_to_pct || last.tensile_up_to_MPa));
        }
}

TEST_CASE("no grade's own practice asks for more than its own interpass maximum") {
    for (const Family& family : families())
        for (const Base& one : family.bases)
            if (one.practice && one.interpass_max)
                for (const PreheatRow& row : one.practice->rows) {
                    INFO(one.name);
                    CHECK(row.minimum.value <= one.interpass_max->value);
                }
}

TEST_CASE("metal nobody can name is treated as 4140, composition and all") {
    const Base& unknown = base("steel", std::string(unknown_metal));
    const auto shares = [](const Base& one) {
        std::vector<std::pair<std::string, double>> found;
        for (const auto& [element, percent] : one.composition)
            found.emplace_back(element, percent.value);
        return found;
    };
    CHECK(shares(unknown) == shares(base("steel", "4140")));
    CHECK(unknown.preheat_groups.empty());
    CHECK(unknown.structure == "ferritic");
    CHECK(minima_degC(unknown.practice.value()) == minima_degC(base("steel", "4140").practice.value()));
}

// What the independent reader of the tables relies on.
TEST_CASE("every listed table is one of its family, every group of a grade is there, and caps rise with "
          "thickness") {
    std::size_t listed = 0;
    for (const Family& family : families())
        for (const Base& one : family.bases) {
            INFO(family.name << '/' << one.name);
            if (family.name != "cast_iron")
                CHECK(std::any_of(family.heat_groups.begin(), family.heat_groups.end(),
                                  [&](const HeatGroup& group) { return group.name == one.heat_group; }));
            CHECK(std::is_sorted(
                one.cev_max.begin(), one.cev_max.end(),
                [](const ThicknessRow& a, const ThicknessRow& b) { return a.value < b.value; }));
            CHECK(std::is_sorted(
                one.typical_cet.begin(), one.typical_cet.end(),
                [](const ThicknessRow& a, const ThicknessRow& b) { return a.value < b.value; }));
            listed += one.listed_in ? one.listed_in->size() : 0;
        }
    CHECK(listed > 25);
}

TEST_CASE("a figure by thickness includes the end of its row, and an unknown one takes the last") {
    const std::vector<ThicknessRow> rows = {{30, 0.45, {}, "a"}, {40, 0.47, {}, "a"}};
    CHECK(row_for(rows, 30)->value == 0.45);
    CHECK(row_for(rows, 30.01)->value == 0.47);
    CHECK_FALSE(row_for(rows, 41));
    CHECK(row_for(rows, std::nullopt)->value == 0.47);
    const std::vector<ThicknessRow> named = {
        {40, 200, {}, "a"}, {{}, 230, "AWS D1.1", "a"}, {{}, 210, {}, "b"}};
    CHECK(row_for(named, 50)->value == 210);
    CHECK(row_for(named, 50, "AWS D1.1")->value == 230);
}

TEST_CASE("grades of one class share their rows") {
    CHECK(minima_degC(base("steel", "C45").practice.value()) ==
          minima_degC(base("steel", "1045").practice.value()));
    CHECK(minima_degC(base("steel", "4140H").practice.value()) ==
          minima_degC(base("steel", "4140").practice.value()));
}

// A designator ends the name: E7018-H8 is of 8 ml/100 g at most [AWS A4.3, restated in an article].
TEST_CASE("a filler with a hydrogen designator has its figure, one without a class has none") {
    std::size_t designated = 0;
    for (const Family& family : families())
        for (const Filler& filler : family.fillers) {
            INFO(filler.name);
            const auto designator = filler.name.rfind("-H");
            if (designator != std::string::npos) {
                CHECK(filler.hydrogen_ml_100g.value().value == std::stod(filler.name.substr(designator + 2)));
                ++designated;
            } else if (filler.hydrogen_ml_100g && filler.hydrogen_ml_100g->source == "hydrogen-unclassed")
                CHECK(filler.hydrogen_ml_100g->value >= 16); // no class: what such fillers bring at most
            else if (filler.form == FillerForm::cored || filler.form == FillerForm::stick)
                CHECK_FALSE(filler.hydrogen_ml_100g);
            else if (family.name == "steel" || family.name == "stainless")
                CHECK(filler.hydrogen_ml_100g);
        }
    CHECK(designated >= 8);
}
