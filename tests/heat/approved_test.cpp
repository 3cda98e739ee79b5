#include <catch2/catch.hpp>

#include <ringfill/heat/bore_heat.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

Approved approved_of(std::optional<double> minimum, std::optional<double> maximum) {
    Approved approved;
    approved.reference = "P-12 rev 2";
    if (minimum)
        approved.preheat_min = celsius(*minimum);
    if (maximum)
        approved.interpass_max = celsius(*maximum);
    return approved;
}

Preheat ruled(HeatSample& sample, const Approved& approved) {
    return sample.preheat(&approved);
}

Approved holding(double degrees, double hours) {
    Approved approved = approved_of(180, 300);
    approved.post_heat = Approved::PostHeat{celsius(degrees), in_si<Time>(hours * 3600)};
    return approved;
}

} // namespace

TEST_CASE("the approved procedure rules, up and down, and the methods stay beside it") {
    HeatSample sample({{"formula", 150}});
    for (const double minimum : {80.0, 200.0}) {
        const Preheat found = ruled(sample, approved_of(minimum, 300));
        CHECK_THAT(deg_c(found.minimum->value), WithinAbs(minimum, 1e-9));
        CHECK_THAT(deg_c(found.interpass_max->value), WithinAbs(300, 1e-9));
        CHECK(found.minimum->by == "the approved procedure P-12 rev 2");
        CHECK(found.approved == "P-12 rev 2");
        REQUIRE(found.methods.size() == 1);
        CHECK(found.methods[0].applies);
        CHECK_FALSE(found.methods[0].rules);
    }
}

TEST_CASE("what the approved procedure leaves open follows from its minimum or from the methods") {
    HeatSample sample({{"formula", 150}});
    CHECK_THAT(deg_c(ruled(sample, approved_of(80, {})).interpass_max->value), WithinAbs(250, 1e-9));
    CHECK_THAT(deg_c(ruled(sample, approved_of(230, {})).interpass_max->value),
               WithinAbs(280, 1e-9)); // gives way
    const Preheat maximum_only = ruled(sample, approved_of({}, 200));
    CHECK_THAT(deg_c(maximum_only.minimum->value), WithinAbs(150, 1e-9));
    CHECK(maximum_only.state == PreheatState::figure);
    CHECK(ruled(sample, approved_of({}, 140)).state == PreheatState::contradictory);
    CHECK(ruled(sample, approved_of(250, 200)).state == PreheatState::contradictory);
}

TEST_CASE("an approved minimum under hand-warm is hand-warm, and takes the place of ours") {
    HeatSample sample({{"formula", 150}});
    Preheat found = ruled(sample, approved_of(10, {}));
    CHECK_THAT(deg_c(found.minimum->value), WithinAbs(20, 1e-9));
    CHECK(found.minimum->by == "the approved procedure P-12 rev 2, raised to hand-warm");
    CHECK(found.state == PreheatState::none); // it rules; what would be more careful is a caution
    sample = HeatSample({{"formula", 0, RF_NONE_NEEDED}});
    CHECK(ruled(sample, approved_of(20, {})).state == PreheatState::none);
    sample = HeatSample({{"graph", 0, RF_NO_FIGURE}});
    found = ruled(sample, approved_of(20, {}));
    CHECK(found.state == PreheatState::needed_without_figure);
    CHECK_FALSE(found.figure());
}

TEST_CASE("an approved maximum over a document's or over the tempering is kept beside it") {
    HeatSample sample({{"formula", 150}});
    CHECK_FALSE(
        ruled(sample, approved_of({}, 315)).overruled.interpass_max); // practice gives way as far as that
    CHECK(ruled(sample, approved_of({}, 316)).overruled.interpass_max);
    sample.grade().tempering = Sourced<Temperature>{celsius(290), "practice"};
    Preheat found = ruled(sample, approved_of({}, 300));
    CHECK_THAT(deg_c(found.overruled.interpass_max.value().value), WithinAbs(240, 1e-9));
    CHECK_THAT(deg_c(found.overruled.rings_most.value().value), WithinAbs(240, 1e-9));
    sample.grade().tempering.reset();
    sample.family.sources["a print"] = {"a document", "-", "-", "standard", "read"};
    sample.grade().interpass_max = Sourced<Temperature>{celsius(225), "a print"};
    found = ruled(sample, approved_of({}, 300));
    CHECK_THAT(deg_c(found.interpass_max->value), WithinAbs(300, 1e-9));
    CHECK(found.overruled.interpass_max.value().by == "the table for G");
    CHECK_FALSE(found.overruled.rings_most);
    CHECK_FALSE(ruled(sample, approved_of({}, 225)).overruled.interpass_max);
}

TEST_CASE("an approved hold within 50 K of the tempering is told") {
    HeatSample sample({{"formula", 150}});
    sample.grade().tempering = Sourced<Temperature>{celsius(280), "practice"};
    CHECK_FALSE(ruled(sample, holding(230, 2)).overruled.hold_most);
    CHECK_THAT(deg_c(ruled(sample, holding(250, 2)).overruled.hold_most.value().value), WithinAbs(230, 1e-9));
}

TEST_CASE("an approved preheat over what softens the metal is told") {
    HeatSample sample({{"formula", 150}});
    CHECK_FALSE(ruled(sample, approved_of(240, 300)).overruled.preheat_most);
    sample.grade().softens_over = Sourced<Temperature>{celsius(225), "practice"};
    CHECK_FALSE(ruled(sample, approved_of(225, 300)).overruled.preheat_most);
    CHECK_THAT(deg_c(ruled(sample, approved_of(240, 300)).overruled.preheat_most.value().value),
               WithinAbs(225, 1e-9));
}

TEST_CASE("a post-heat of the approved procedure takes the place of the family's") {
    HeatSample sample({{"formula", 150}});
    const Preheat found = ruled(sample, holding(250, 2));
    REQUIRE(found.post_heat);
    CHECK(found.post_heat->is_approved);
    CHECK_THAT(deg_c(found.post_heat->temperature.value), WithinAbs(250, 1e-9));
    CHECK(found.post_heat->time.value() == 7200);
}

TEST_CASE("a heat input outside the approved band is refused, naming both") {
    Procedure procedure;
    procedure.path = "procedures.main";
    procedure.approved = approved_of({}, {});
    const auto told = [&](double q) {
        std::string text;
        for (const Fault& fault : band_faults("arm root", procedure, {{"face 1", in_si<EnergyPerLength>(q)}}))
            text += to_string(fault);
        return text;
    };
    CHECK(told(1e6).empty()); // no band
    procedure.approved->heat_input = {in_si<EnergyPerLength>(0.4e6), in_si<EnergyPerLength>(0.9e6)};
    CHECK(told(0.4e6).empty());
    CHECK(told(0.9e6).empty());
    CHECK(
        told(0.39e6) ==
        "procedures.main.approved.heat_input: 0.4 to 0.9 kJ/mm does not hold the 0.39 kJ/mm that the face 1 "
        "of arm root is laid with; change wire feed, current, voltage or travel, or take the procedure that "
        "fits");
    CHECK_FALSE(told(0.91e6).empty());
    CHECK_FALSE(told(0.3999e6).empty());
    CHECK_FALSE(told(0.9001e6).empty());
}

TEST_CASE("a long name of a bore is cut to sixty characters in the refusal") {
    Procedure procedure;
    procedure.path = "procedures.main";
    procedure.approved = approved_of({}, {});
    procedure.approved->heat_input = {in_si<EnergyPerLength>(0.4e6), in_si<EnergyPerLength>(0.9e6)};
    const std::string name(70, 'n');
    const auto faults = band_faults(name, procedure, {{"bore", in_si<EnergyPerLength>(1e6)}});
    REQUIRE(faults.size() == 1);
    const std::string told = to_string(faults[0]);
    CHECK_THAT(told, Catch::Contains(std::string(60, 'n')));
    CHECK_THAT(told, !Catch::Contains(std::string(61, 'n')));
}
