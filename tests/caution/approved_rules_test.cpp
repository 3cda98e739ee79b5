#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::vector<Caution> cautions(const std::optional<Approved>& approved,
                              UnitSystem units = UnitSystem::metric) {
    Procedure procedure;
    procedure.approved = approved;
    CautionList found{units, Matter::cracking, {{Concern::procedure, "main"}}};
    approved_rules(found, procedure);
    return found.found;
}

std::string text_of(const Approved& approved, UnitSystem units = UnitSystem::metric) {
    return cautions(approved, units).at(0).text;
}

} // namespace

TEST_CASE("a job without an approved procedure has no word of one") {
    CHECK(cautions(std::nullopt).empty());
}

TEST_CASE("an approved procedure is told whole, exact") {
    Approved approved;
    approved.reference = "P-12 rev 2";
    approved.preheat_min = celsius(177);
    approved.interpass_max = celsius(299);
    approved.heat_input = {in_si<EnergyPerLength>(0.4e6), in_si<EnergyPerLength>(0.9e6)};
    approved.post_heat = Approved::PostHeat{celsius(250), in_si<Time>(7200)};
    CHECK(told(cautions(approved).at(0)) ==
          "main | before | yes | The approved procedure P-12 rev 2 rules: preheat at least 177 °C, interpass "
          "at most "
          "299 °C, heat input 0.4 kJ/mm to 0.9 kJ/mm, after welding 250 °C for 2 h 00 min. | the job gives "
          "it; the methods "
          "stand beside it | practice");
    // 177 degC are 350.6 degF, 299 degC are 570.2 degF, 250 degC are 482 degF.
    CHECK(text_of(approved, UnitSystem::inch) == "The approved procedure P-12 rev 2 rules: preheat at least "
                                                 "350.6 °F, interpass at most 570.2 °F, heat input 0.4 "
                                                 "kJ/mm to 0.9 kJ/mm, after welding 482 °F for 2 h 00 min.");
}

TEST_CASE("a minimum over its maximum is called contradictory and neither is changed") {
    Approved approved;
    approved.reference = "P-9";
    approved.preheat_min = celsius(200);
    approved.interpass_max = celsius(150);
    CHECK(text_of(approved) ==
          "The approved procedure P-9 rules: preheat at least 200 °C, interpass at most 150 °C. "
          "Contradictory: between its minimum and its maximum no ring could begin; ask before any arc.");
    for (const double most : {200.0, 214.0}) { // a window of nothing, and one that no ring fits into
        approved.interpass_max = celsius(most);
        CHECK(text_of(approved).find("Contradictory") != std::string::npos);
    }
    approved.interpass_max = celsius(215);
    CHECK(text_of(approved).find("Contradictory") == std::string::npos);
}
