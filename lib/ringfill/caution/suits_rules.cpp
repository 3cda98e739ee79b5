#include <ringfill/caution/suits_rules.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_named = 4;

/// The first few names, and how many more there are.
std::string few_of(const std::vector<std::string>& names) {
    const auto end = names.begin() + static_cast<std::ptrdiff_t>(std::min(names.size(), most_named));
    std::string text = fmt::format("{}", fmt::join(names.begin(), end, ", "));
    if (names.size() > most_named)
        text += fmt::format(" or {} more", names.size() - most_named);
    return text;
}

/// Fillers of other families than one's own: a buffer of its own kind is no other one.
std::vector<std::string> others(const std::vector<std::string>& buffer, const std::string& filler) {
    const std::string family = filler.substr(0, filler.find('/') + 1);
    std::vector<std::string> found;
    for (const std::string& one : buffer)
        if (!one.starts_with(family))
            found.push_back(one);
    return found;
}

std::string or_another(const std::vector<std::string>& buffer) {
    return buffer.empty() ? std::string() : fmt::format("; or lay a buffer of {} first", few_of(buffer));
}

} // namespace

std::vector<Caution> suit_cautions(const WornBore& bore, const Procedure& procedure, const Suit* rule,
                                   const std::vector<std::string>& buffer) {
    const auto told = [&](std::string text, std::string because, std::string source) -> std::vector<Caution> {
        return {{bore.name, "before", "yes", std::move(text), std::move(because), std::move(source)}};
    };
    if (!rule)
        return told(fmt::format("Settle with somebody qualified whether {} may go on {}: no table says.",
                                procedure.filler, bore.base),
                    "neither by their groups nor by their names is there a rule for the two", "practice");
    if (rule->verdict == Verdict::not_advised)
        return told(
            fmt::format("Do not weld {} with {} unless the approved procedure says so: it is not advised.",
                        bore.base, procedure.filler),
            rule->why, rule->source);
    if (rule->verdict == Verdict::recommended)
        return {};
    if (ranges::find(buffer, procedure.filler) != buffer.end())
        return told(
            fmt::format("Lay the first layer as a buffer, with as little of {} melted in as can be: the "
                        "lowest current that wets, the arc on the bead before{}.",
                        bore.base, or_another(others(buffer, procedure.filler))),
            rule->why, rule->source);
    return told(
        fmt::format(
            "Lay a buffer first, of {}, or have the approved procedure say otherwise; this plan counts "
            "{} alone.",
            few_of(buffer), procedure.filler),
        rule->why, rule->source);
}

std::vector<Caution> dilution_cautions(const WornBore& bore, const Procedure& procedure,
                                       const Dilution& dilution) {
    const auto family = [](const std::string& name) { return name.substr(0, name.find('/')); };
    if (family(bore.base) == family(procedure.filler) || dilution.finish_layer == 0 ||
        dilution.finish_layer >= dilution.needed)
        return {};
    const auto finish = static_cast<std::size_t>(dilution.finish_layer) - 1;
    return {{bore.name, "before", "yes",
             fmt::format("Bore deeper first and lay {} layers under the finished surface, or melt in less: "
                         "there the metal "
                         "is not yet that of {}.",
                         dilution.needed, procedure.filler),
             fmt::format("the finished surface lies in layer {} with about {:.0f} % of the base metal in it",
                         dilution.finish_layer, 100 * dilution.base_left[finish]),
             dilution.share.source == "job" ? "own" : dilution.share.source}};
}

} // namespace ringfill
