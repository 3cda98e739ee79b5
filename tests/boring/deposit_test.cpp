#include <catch2/catch.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/units/metric.hpp>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

const Filler& filler_named(const std::string& family, const std::string& name) {
    for (const Family& one : shop().registry.families())
        if (one.name == family)
            for (const Filler& filler : one.fillers)
                if (filler.name == name)
                    return filler;
    throw std::logic_error("no such filler: " + name);
}

Deposit deposit(const std::string& family, const std::string& name) {
    const Filler& filler = filler_named(family, name);
    return deposit_of({family + '/' + name, filler.group}, filler.hardness_HV, shop().cutting);
}

BarSettings settings_for(const std::string& family, const std::string& name, const BoringBar& bar = {}) {
    return bar_settings(bar, shop().cutting, deposit(family, name));
}

double speed_of(const BarSettings& settings) {
    return m_min(settings.cutting_speed.value);
}

} // namespace

TEST_CASE("every filler of the product lays a deposit that is known") {
    for (const Family& family : shop().registry.families())
        for (const Filler& filler : family.fillers) {
            INFO(family.name << '/' << filler.name);
            CHECK(deposit_of({family.name + '/' + filler.name, filler.group}, filler.hardness_HV,
                             shop().cutting)
                      .is_known);
        }
}

// The groups of section 11, each by a filler whose kind its standard names.
TEST_CASE("a filler lays the deposit of its kind") {
    CHECK(deposit("steel", "ER70S-6").group == DepositGroup::mild);
    CHECK(deposit("steel", "ER80S-D2").group == DepositGroup::low_alloy);
    CHECK(deposit("hardfacing", "T Fe1").group == DepositGroup::hardened);
    CHECK(deposit("hardfacing", "R Co2").group == DepositGroup::hardened);
    CHECK(deposit("stainless", "ER410").group == DepositGroup::hardened);
    CHECK(deposit("stainless", "ER309L").group == DepositGroup::austenitic);
    CHECK(deposit("hardfacing", "T Fe10").group == DepositGroup::austenitic);
    CHECK(deposit("hardfacing", "T Fe9").group == DepositGroup::manganese);
    CHECK(deposit("nickel", "ERNiCr-3").group == DepositGroup::nickel);
    CHECK(deposit("bronze", "ERCuAl-A2").group == DepositGroup::bronze);
}

TEST_CASE("its own name goes before its group, and the later table before the earlier") {
    Cutting cutting = shop().cutting;
    cutting.deposits.emplace(cutting.deposits.begin(), "steel/ER70S-6", DepositGroup::low_alloy);
    CHECK(deposit_of({"steel/ER70S-6", "carbon_steel_filler"}, {}, cutting).group == DepositGroup::low_alloy);
    CHECK(deposit_of({"steel/ER70S-3", "carbon_steel_filler"}, {}, cutting).group == DepositGroup::mild);
    cutting.deposits.emplace_back("carbon_steel_filler", DepositGroup::cast_iron);
    CHECK(deposit_of({"steel/ER70S-3", "carbon_steel_filler"}, {}, cutting).group == DepositGroup::cast_iron);
}

TEST_CASE("a filler that no table names is cut as hardened, and said to be") {
    const Deposit unknown = deposit_of({"own/A", ""}, {}, shop().cutting);
    CHECK_FALSE(unknown.is_known);
    CHECK(unknown.group == DepositGroup::hardened);
}

// Section 11: hardened over 350 HV; over 45 HRC, which are 446 HV, it is not bored.
TEST_CASE("hardness makes a soft deposit a hardened one, and a hard one no work for a bar") {
    const auto of = [](const char* group, double vickers) {
        return deposit_of({"own/A", group}, Sourced<double>{vickers, "own"}, shop().cutting);
    };
    CHECK(of("low_alloy_filler", 350).group == DepositGroup::low_alloy);
    CHECK(of("low_alloy_filler", 351).group == DepositGroup::hardened);
    CHECK(of("manganese_filler", 400).group == DepositGroup::manganese);
    CHECK_FALSE(of("low_alloy_filler", 446).too_hard);
    CHECK(of("low_alloy_filler", 447).too_hard);
    CHECK_FALSE(deposit("hardfacing", "T Fe1").too_hard);
    CHECK_FALSE(deposit("hardfacing", "E Co2").too_hard);
    for (const char* name : {"T Fe2", "T Fe3", "T Fe14", "S Fe2", "S Fe8"})
        CHECK(deposit("hardfacing", name).too_hard);
}

TEST_CASE("no hard or work-hardening deposit is cut at the mild figure, with either tool") {
    for (const CuttingTool tool : {CuttingTool::carbide, CuttingTool::hss}) {
        const ToolFigures& mild = shop().cutting.of(tool, DepositGroup::mild);
        for (const DepositGroup group :
             {DepositGroup::low_alloy, DepositGroup::hardened, DepositGroup::austenitic,
              DepositGroup::manganese, DepositGroup::nickel}) {
            const ToolFigures& row = shop().cutting.of(tool, group);
            CHECK(row.cutting_speed.value < mild.cutting_speed.value);
            CHECK(row.skin_speed.value <= row.cutting_speed.value);
            CHECK(row.edge_life.value < mild.edge_life.value);
        }
    }
}

TEST_CASE("a deposit that hardens under the edge gets cuts and feeds that get under its skin") {
    for (const auto& [family, name] : {std::pair("stainless", "ER309L"), std::pair("hardfacing", "T Fe9"),
                                       std::pair("nickel", "ERNiCr-3")}) {
        const BarSettings settings = settings_for(family, name);
        CHECK(settings.cuts_to_the_end());
        CHECK_THAT(mm(settings.finish_cut.value), WithinAbs(0.5, 1e-12));
        CHECK(settings.semi_finish_cut.value >= millimetres(0.5));
        CHECK(settings.feed.value >= millimetres(0.12));
        CHECK(settings.facing_feed.value >= millimetres(0.12));
    }
    const BarSettings mild = settings_for("steel", "ER70S-6");
    CHECK_FALSE(mild.cuts_to_the_end());
    CHECK_THAT(mm(mild.finish_cut.value), WithinAbs(0.25, 1e-12));
}

TEST_CASE("what the job says wins, and its tool picks the row") {
    BoringBar bar;
    bar.tool = CuttingTool::hss;
    CHECK_THAT(speed_of(settings_for("steel", "ER70S-6", bar)), WithinAbs(27, 1e-9));
    CHECK_THAT(speed_of(settings_for("hardfacing", "T Fe9")), WithinAbs(24, 1e-9));
    bar.cutting_speed = in_si<Speed>(50 / factor::minute);
    bar.feed = millimetres(0.08);
    bar.edge_life = in_si<Time>(60);
    const BarSettings own = settings_for("hardfacing", "T Fe9", bar);
    CHECK_THAT(speed_of(own), WithinAbs(50, 1e-9));
    CHECK_THAT(m_min(own.skin_speed.value), WithinAbs(50, 1e-9));
    CHECK_THAT(mm(own.feed.value), WithinAbs(0.08, 1e-12));
    CHECK(own.edge_life.source == "job");
}

// A bore of 90 mm: 24 m/min are 84.9 rev/min, in the skin 20 m/min are 70.7.
TEST_CASE("a bore is cut by the deposit of its filler, slower in the skin") {
    const std::string manganese =
        R"("filler": "hardfacing/T Fe9", "wire": "1.2 mm", "travel": "400 mm/min", "wire_feed": "6 m/min")";
    const Plan whole = plan(job_from(job_text(manganese, bore_text("arm root", ""))), shop());
    const BoringPlan& boring = whole.bores.front().boring;
    CHECK(boring.settings.deposit.group == DepositGroup::manganese);
    CHECK_THAT(rev_min(boring.bar.used), WithinAbs(84.88, 0.01));
    CHECK(boring.cuts.back().kind == CutKind::finish);
    bool welded = false;
    for (const Cut& cut : boring.cuts) {
        const bool in_skin = cut.kind == CutKind::skim || !welded;
        welded = cut.kind != CutKind::skim;
        CHECK_THAT(rev_min(cut.bar.used), WithinAbs(in_skin ? 70.74 : 84.88, 0.01));
    }
    CHECK(boring.edges.rough > 1);
}
