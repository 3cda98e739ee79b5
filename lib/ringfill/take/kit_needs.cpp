#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/minmax.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>

namespace ringfill {
namespace {

/// Nobody watches well for longer [common practice, no source].
const Time long_watch = in_si<Time>(8 * 3'600);

/// All holes of one diameter.
struct SameDiameter {
    Length diameter;
    std::vector<double> holes = {};
    std::vector<double> fittings = {};
    std::string where = {};
};

std::vector<SameDiameter> by_diameter(const std::vector<WornBore>& bores) {
    std::vector<SameDiameter> groups;
    for (const WornBore& bore : bores)
        for (const Hole& hole : bore.holes) {
            const auto is_same = [&](const SameDiameter& known) {
                return std::fabs((known.diameter - hole.diameter).value()) < 1e-6;
            };
            SameDiameter& group = group_for(groups, is_same, SameDiameter{hole.diameter});
            group.holes.push_back(bore.count);
            group.fittings.push_back(hole.other_end == "fitting" ? bore.count : 0);
            group.where += fmt::format("{}{} in {}", group.where.empty() ? "" : ", ", bore.count, bore.name);
        }
    return groups;
}

Need hole_need(NeedKind kind, Length diameter, const std::vector<double>& holes, double spare,
               std::string why) {
    return by_the_piece(need_of(kind, {}, diameter, {{"n", holes}, {"spare", spare, "pieces"}},
                                {sum(holes), "sum(n)"}, {spare, "0*need + spare"}, std::move(why)));
}

Need edges_of_kind(NeedKind kind, const std::vector<BorePlan>& bores, int Edges::*edges, Time Edges::*time,
                   const char* for_what) {
    const std::string& source = bores.front().boring.settings.edge_life.source;
    const auto [shortest, longest] = ranges::minmax(
        bores | ranges::views::transform([](const BorePlan& bore) { return bore.boring.edges.life; }));
    const auto in_words = [&](const BorePlan& bore) {
        return fmt::format("{}{} {} ({})", bore.name,
                           bore.count > 1 ? fmt::format(" × {}, each", bore.count) : "",
                           bore.boring.edges.*edges, show(bore.boring.edges.*time));
    };
    const auto counts = each(bores, &BorePlan::count);
    const auto of_each = each(bores, [&](const BorePlan& bore) { return bore.boring.edges.*edges; });
    return by_the_piece(need_of(kind, {}, {}, {{"n", counts}, {"k", of_each, "pieces"}},
                                {sum_of_products(counts, of_each), "sum(n*k)", source}, spares(1),
                                fmt::format("{}: {}; one edge lasts {}{}; and one spare", for_what,
                                            listed(bores, "; ", in_words), show(shortest),
                                            shortest < longest ? " to " + show(longest) : ""),
                                source));
}

Need one_of(NeedKind kind, std::string why, const std::string& source) {
    return by_the_piece(need_of(kind, {}, {}, {{"n", 1, "pieces"}}, {1, "1*n", source}, {0, "0*n", source},
                                std::move(why), source));
}

} // namespace

std::vector<Need> blanket_needs(const std::vector<BorePlan>& bores) {
    std::vector<double> ones;
    std::string where;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        const bool harms =
            is_heated_against_its_rules(bore.heat) || bore.heat.cools_in_the_open || bore.heat.cold_iron;
        const bool preheated = preheat.asked == PreheatState::needed_without_figure ||
                               (preheat.minimum && preheat.minimum->value > chill_off);
        const bool slow = preheat.post_heat ||
                          ranges::contains(preheat.values, "cooling_max_K_per_h", &AnsweredFigure::name);
        if (harms || (!preheated && !slow))
            continue;
        where +=
            fmt::format("{}{} ({}{}{})", ones.empty() ? "" : ", ", bore.name, preheated ? "preheated" : "",
                        preheated && slow ? ", " : "", slow ? "cools slowly" : "");
        ones.push_back(1);
    }
    if (ones.empty())
        return {};
    return {by_the_piece(
        need_of(kinds::blanket, {}, {}, {{"n", ones}}, {sum(ones), "sum(n)"}, spares(0),
                fmt::format("keeps the heat in and evens it out, one for each bore of {}", where)))};
}

std::vector<Need> hole_needs(const std::vector<WornBore>& bores) {
    std::vector<Need> lines;
    for (const auto& [diameter, holes, fittings, where] : by_diameter(bores)) {
        lines.push_back(hole_need(
            kinds::plug_rod, diameter, holes, 1,
            fmt::format("a piece of copper or carbon rod in each hole before welding ({}); and one spare",
                        where)));
        lines.push_back(
            hole_need(kinds::drill, diameter, {1}, 0, "to reopen the plugged holes after boring"));
        if (sum(fittings) > 0)
            lines.push_back(
                hole_need(kinds::fitting, diameter, fittings, 1, "heat ruins the old ones; and one spare"));
    }
    return lines;
}

std::vector<Need> insert_needs(const std::vector<BorePlan>& bores) {
    if (bores.empty())
        return {};
    const bool springs =
        ranges::any_of(bores, [](const BorePlan& bore) { return !bore.boring.settings.cuts_to_the_end(); });
    return {edges_of_kind(kinds::rough_edge, bores, &Edges::rough, &Edges::rough_time,
                          "skim, rough and semi-finish cuts"),
            edges_of_kind(kinds::finish_edge, bores, &Edges::finish, &Edges::finish_time,
                          springs ? "a fresh one for each finish cut and its spring pass"
                                  : "a fresh one for each finish cut")};
}

std::vector<Need> fire_watch_needs(const FireWatch& watch) {
    std::string why = fmt::format("not the one who welds; from the first flame to {} after the last heat",
                                  show(watch.after.value));
    if (!watch.periods.empty())
        why += fmt::format(", {} in all", show(watch.total));
    if (!watch.periods.empty() && watch.total > long_watch)
        why += ": more than one can watch, so bring relief";
    if (watch.checks_for)
        why += fmt::format(", and looks for {} after that", show(watch.checks_for->value));
    return {one_of(kinds::fire_watch, why, watch.after.source),
            one_of(kinds::extinguisher, "in the hand of the fire watch, besides the one on the machine",
                   "practice")};
}

} // namespace ringfill
