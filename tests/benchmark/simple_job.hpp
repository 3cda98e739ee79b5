#pragma once

#include <string>

namespace ringfill::testing {

/// A bore that says nothing of what carries heat off: no heat balance, no curve.
inline const std::string simple_job =
    R"({"format":"ringfill-job/1","units":"mm","title":"Pivots","procedures":{"main":{"filler":"steel/ER70S-6",)"
    R"("wire":"1.0 mm","gas":"M21","wire_feed":"8 m/min","current":"180 A","voltage":"19.5 V","travel":"350 mm/min"}},)"
    R"("bores":[{"name":"arm","base":"steel/S355J2","finish_diameter":"90 mm","length":"80 mm",)"
    R"("worn":{"diameter":"92.4 mm"},"skim":"0.5 mm","stock":"2 mm"}]})";

} // namespace ringfill::testing
