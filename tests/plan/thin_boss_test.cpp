#include <catch2/catch.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// A boss of a tenth of a millimetre reaches its goal so near to the end of a step that the curve through the
// step, by its rounding, does not: the search for the time once had no bracket.
TEST_CASE("a boss that is warm in an instant is planned or told to have no heat balance") {
    const Plan made = plan(job_from(R"({
 "format": "ringfill-job/1",
 "title": "thin",
 "units": "mm",
 "site": {
  "ambient": "9 degC"
 },
 "procedures": {
  "rods": {
   "filler": "steel/ER70S-2",
   "wire": "2.4 mm",
   "gas": "I1",
   "current": "170 A",
   "voltage": "13 V",
   "deposition_rate": "0.9 kg/h",
   "travel": "110 mm/min",
   "bead_ratio": 3
  }
 },
 "bores": [
  {
   "name": "ram eye",
   "axis": "vertical",
   "base": "steel/1045",
   "finish_diameter": "90 mm",
   "length": "0.1 mm",
   "boss_diameter": "130 mm",
   "attached": [
    {
     "thickness": "15 mm"
    }
   ],
   "worn": {
    "diameter": "110 mm",
    "offset": "4.542110807697883 mm"
   },
   "procedure": "rods",
   "skim": "5 mm",
   "stock": "1e-06 mm",
   "overhang": "1e-06 mm"
  }
 ],
 "heater": {
  "kind": "propane",
  "power": "20 kW"
 },
 "reserve": "20 %"
})"),
                           shop());
    const BorePlan& bore = made.bores.at(0);
    CHECK((bore.heat_balance.has_value() || !bore.no_balance.empty()));
    if (bore.heat_balance)
        CHECK(bore.heat_balance->hot.run.steps.front().time >= Time());
}
