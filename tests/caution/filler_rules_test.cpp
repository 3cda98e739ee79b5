#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines cautions(const std::string& base, const std::string& filler) {
    WornBore bore;
    bore.name = "lug";
    bore.base = base;
    Procedure procedure;
    procedure.filler = filler;
    return told_by(family_rules, bore, {}, UnitSystem::metric, procedure);
}

} // namespace

TEST_CASE("a wire of another family than the metal is a caution") {
    CHECK(cautions("steel/C45", "steel/ER70S-6").empty());
    CHECK(cautions("stainless/304", "steel/ER70S-6") ==
          Lines{"lug | before | yes | Have the approved procedure name this filler for this metal before you "
                "load it. | "
                "stainless/304 is to be welded with steel/ER70S-6, of another family | practice"});
    CHECK(cautions("steel/304", "steely/304").size() == 1);
}
