#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

WornBore lug() {
    WornBore bore;
    bore.name = "lug";
    bore.base = "steel/C45";
    return bore;
}

/// What a rule says of the bore welded with a filler.
Lines lines(void (*rule)(CautionList&, const RuledBore&), const BorePlan& plan, const std::string& filler) {
    Procedure procedure;
    procedure.filler = filler;
    return told_by(rule, lug(), plan, UnitSystem::metric, procedure);
}

Suit rule(Verdict verdict) {
    Suit one;
    one.verdict = verdict;
    one.why = "they crack";
    one.source = "book";
    return one;
}

Dilution thinned(int needed, int finish) {
    Dilution dilution;
    dilution.share = {0.2, "usual"};
    dilution.needed = needed;
    dilution.finish_layer = finish;
    dilution.base_left = {0.2, 0.04, 0.008};
    return dilution;
}

Lines suits(const std::string& filler, const std::optional<Suit>& suit,
            const std::vector<std::string>& buffer = {}) {
    BorePlan plan;
    plan.suit = suit;
    plan.buffer = buffer;
    return lines(suit_rules, plan, filler);
}

Lines diluted(const std::string& filler, const Dilution& dilution) {
    BorePlan plan;
    plan.dilution = dilution;
    return lines(dilution_rules, plan, filler);
}

Lines ferrite_of(const LayerMetals& metals) {
    BorePlan plan;
    plan.dilution = thinned(2, 1);
    plan.layer_metals = metals;
    return lines(ferrite_rules, plan, "steel/W");
}

Lines dry(const Filler& electrode) {
    Procedure procedure;
    procedure.filler = "steel/E";
    CautionList cautions{UnitSystem::metric, Matter::cracking, {{Concern::procedure, "main"}}};
    form_rules(cautions, procedure, electrode);
    return told(cautions.found);
}

} // namespace

TEST_CASE("a filler that is not advised is a caution with its reason") {
    const Suit no = rule(Verdict::not_advised);
    CHECK(suits("nickel/N", no) ==
          Lines{"lug | before | yes | Do not weld steel/C45 with nickel/N unless the approved procedure says "
                "so: it is not "
                "advised. | they crack | book"});
}

TEST_CASE("a filler that wants a buffer is a caution that names a few of its fillers") {
    const Suit buffered = rule(Verdict::with_buffer);
    CHECK(suits("hard/H", buffered, {"s/A", "s/B"}) ==
          Lines{"lug | before | yes | Lay a buffer first, of s/A, s/B, or have the approved procedure say "
                "otherwise; this "
                "plan counts hard/H alone. | they crack | book"});
    CHECK(suits("hard/H", buffered, {"a", "b", "c", "d", "e", "f"})[0].find("of a, b, c, d or 2 more, or") !=
          std::string::npos);
}

TEST_CASE("what is recommended is silent") {
    const Suit yes = rule(Verdict::recommended);
    CHECK(suits("steel/W", yes).empty());
}

TEST_CASE("a filler that is its own buffer is told how its first layer becomes one") {
    const Suit buffered = rule(Verdict::with_buffer);
    CHECK(suits("s/A", buffered, {"n/N", "s/A", "s/B"}) ==
          Lines{"lug | before | yes | Lay the first layer as a buffer, with as little of steel/C45 melted in "
                "as can "
                "be: the lowest current that wets, the arc on the bead before; or lay a buffer of n/N first. "
                "| they "
                "crack | book"});
    CHECK(suits("s/A", buffered, {"s/A"})[0].find("the arc on the bead before. |") != std::string::npos);
}

TEST_CASE("two metals that no table knows together are never silent") {
    CHECK(suits("own/X", std::nullopt) ==
          Lines{"lug | before | yes | Settle with somebody qualified whether own/X may go on steel/C45: no "
                "table says. | "
                "neither by their groups nor by their names is there a rule for the two | practice"});
}

TEST_CASE("a finished surface that is not yet the filler's own metal is a caution between families") {
    CHECK(diluted("stainless/S", thinned(2, 1)) ==
          Lines{"lug | before | yes | Bore deeper first and lay 2 layers under the finished surface, or melt "
                "in less: there "
                "the metal is not yet that of stainless/S. | the finished surface lies in layer 1 with about "
                "20 % of the "
                "base metal in it | usual"});
    CHECK(diluted("stainless/S", thinned(2, 2)).empty());
    CHECK(diluted("stainless/S", thinned(2, 0)).empty());
    CHECK(diluted("steel/W", thinned(2, 1)).empty());
}

// Worked by hand: Cr 20, Ni 12: 3 (20 - 0.93 x 12 - 6.7) = 6.42; Ni 14: 0.84.
TEST_CASE("a first layer with too little ferrite is a caution") {
    LayerMetals metals;
    metals.layers = {{{"Cr", 20}, {"Ni", 12}}};
    CHECK(ferrite_of(metals).empty());
    metals.layers = {{{"Cr", 20}, {"Ni", 14}}};
    CHECK(
        ferrite_of(metals) ==
        Lines{
            "lug | before | yes | Melt in less of the base metal with the first layer (less current, the arc "
            "on the bead "
            "before), and test it with dye: without ferrite it cracks hot, and on hard steel it may be part "
            "martensite. | with 20 % of the base metal in it the first layer is estimated to hold 1 % "
            "ferrite, give or "
            "take 4 points; 3 to 4 are the least | ferrite-least"});
    metals.layers.clear();
    CHECK(ferrite_of(metals).empty());
}

TEST_CASE("electrodes with a limit of hydrogen are to be dry, wire and others are silent") {
    Filler electrode;
    electrode.form = FillerForm::stick;
    CHECK(dry(electrode).empty());
    electrode.hydrogen_ml_100g = {8, "class"};
    CHECK(dry(electrode) ==
          Lines{"main | before | yes | Dry the electrodes as their maker says and take them from a "
                "heated quiver: "
                "preheat here is worked out for dry ones. | the 8 ml/100 g of steel/E is the limit of its "
                "class for dry "
                "electrodes | practice"});
    electrode.form = FillerForm::solid;
    CHECK(dry(electrode).empty());
}
