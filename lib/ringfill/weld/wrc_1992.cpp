#include <ringfill/weld/wrc_1992.hpp>

namespace ringfill {

Equivalents wrc_1992(const Shares& metal) {
    const auto of = [&](std::string_view element) { return share_of(metal, element); };
    return {of("Cr") + of("Mo") + 0.7 * of("Nb"), of("Ni") + 35 * of("C") + 20 * of("N") + 0.25 * of("Cu")};
}

bool in_wrc_1992_range(const Shares& metal) {
    return share_of(metal, "Mn") <= 10 && share_of(metal, "Mo") <= 3 && share_of(metal, "N") <= 0.2 &&
           share_of(metal, "Si") <= 1;
}

std::vector<Working> wrc_1992_working(const Shares& metal) {
    const auto input = [&](const char* element) { return Input{element, share_of(metal, element), "%"}; };
    const Equivalents found = wrc_1992(metal);
    return {{"wrc_cr_eq_pct",
             "Cr + Mo + 0.7*Nb",
             {input("Cr"), input("Mo"), input("Nb")},
             found.chromium,
             "%",
             "WRC-1992"},
            {"wrc_ni_eq_pct",
             "Ni + 35*C + 20*N + 0.25*Cu",
             {input("Ni"), input("C"), input("N"), input("Cu")},
             found.nickel,
             "%",
             "WRC-1992"}};
}

} // namespace ringfill
