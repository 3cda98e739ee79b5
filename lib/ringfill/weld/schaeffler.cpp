#include <ringfill/weld/schaeffler.hpp>

#include <algorithm>

namespace ringfill {

Equivalents schaeffler(const Shares& metal) {
    const auto of = [&](std::string_view element) { return share_of(metal, element); };
    return {of("Cr") + of("Mo") + 1.5 * of("Si") + 0.5 * of("Nb"), of("Ni") + 30 * of("C") + 0.5 * of("Mn")};
}

double ferrite(const Equivalents& equivalents) {
    return std::max(0.0, 3 * (equivalents.chromium - 0.93 * equivalents.nickel - 6.7));
}

std::vector<Working> schaeffler_working(const Shares& metal) {
    const auto input = [&](const char* element) { return Input{element, share_of(metal, element), "%"}; };
    const Equivalents found = schaeffler(metal);
    return {{"cr_eq_pct",
             "Cr + Mo + 1.5*Si + 0.5*Nb",
             {input("Cr"), input("Mo"), input("Si"), input("Nb")},
             found.chromium,
             "%",
             "Schaeffler"},
            {"ni_eq_pct",
             "Ni + 30*C + 0.5*Mn",
             {input("Ni"), input("C"), input("Mn")},
             found.nickel,
             "%",
             "Schaeffler"},
            {"ferrite_pct",
             "max(0, 3*(Cr_eq - 0.93*Ni_eq - 6.7))",
             {{"Cr_eq", found.chromium, "%"}, {"Ni_eq", found.nickel, "%"}},
             ferrite(found),
             "%",
             "Seferian-ferrite"}};
}

} // namespace ringfill
