#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>

namespace ringfill {
namespace {

/// Nobody watches well for longer [common practice, no source].
const Time long_watch = in_si<Time>(8 * 3'600);

/// All holes of one diameter.
struct SameDiameter {
    Length diameter;
    std::vector<double> holes;
    std::vector<double> fittings;
    std::string where;
};

std::vector<SameDiameter> by_diameter(const std::vector<HoleUse>& holes) {
    std::vector<SameDiameter> groups;
    for (const HoleUse& use : holes) {
        SameDiameter& group = group_for(
            groups,
            [&](const SameDiameter& known) {
                return std::fabs((known.diameter - use.diameter).value()) < 1e-6;
            },
            [&] {
                return SameDiameter{use.diameter, {}, {}, {}};
            });
        group.holes.push_back(use.holes);
        group.fittings.push_back(use.fitting ? use.holes : 0);
        group.where += fmt::format("{}{} in {}", group.where.empty() ? "" : ", ", use.holes, use.bore);
    }
    return groups;
}

double sum(const std::vector<double>& numbers) {
    return std::accumulate(numbers.begin(), numbers.end(), 0.0);
}

Need hole_need(NeedKind kind, Length diameter, const std::vector<double>& each, double spare,
               std::string why) {
    return by_the_piece(
        need_of(kind, {}, diameter, {sum(each), "sum(n)", {{"n", each}}},
                {spare, "0*need + spare", {{"need", sum(each), "pieces"}, {"spare", spare, "pieces"}}}),
        std::move(why), "practice");
}

std::string warm_bore(const BlanketUse& use) {
    if (use.preheated && use.cools_slowly)
        return fmt::format("{} (preheated, cools slowly)", use.bore);
    return fmt::format("{} ({})", use.bore, use.preheated ? "preheated" : "cools slowly");
}

Need edges_of_kind(NeedKind kind, const std::vector<InsertUse>& uses, int Edges::*edges, Time Edges::*time,
                   const char* for_what, const std::string& source) {
    double need = 0;
    std::vector<double> counts;
    std::vector<double> each;
    std::string where;
    for (const InsertUse& use : uses) {
        counts.push_back(use.count);
        each.push_back(use.each.*edges);
        need += counts.back() * each.back();
        where += fmt::format("{}{}{} {} ({})", where.empty() ? "" : "; ", use.bore,
                             use.count > 1 ? fmt::format(" × {}, each", use.count) : std::string(),
                             use.each.*edges, show(use.each.*time));
    }
    return by_the_piece(need_of(kind, {}, {},
                                {need, "sum(n*k)", {{"n", counts}, {"k", each, "pieces"}}, source},
                                spares(need, 1, kind)),
                        fmt::format("{}: {}; one edge lasts {}; and one spare", for_what, where,
                                    show(uses.front().each.life)),
                        source);
}

Need one_of(NeedKind kind, std::string why, std::string source) {
    return by_the_piece(need_of(kind, {}, {}, {1, "1*n", {{"n", 1, "pieces"}}, source},
                                {0, "0*n", {{"n", 1, "pieces"}}, source}),
                        std::move(why), source);
}

} // namespace

std::vector<Need> blanket_needs(const std::vector<BlanketUse>& uses) {
    std::vector<double> each;
    std::string bores;
    for (const BlanketUse& use : uses) {
        if (!use.preheated && !use.cools_slowly)
            continue;
        bores += fmt::format("{}{}", each.empty() ? "" : ", ", warm_bore(use));
        each.push_back(1);
    }
    if (each.empty())
        return {};
    return {by_the_piece(need_of(NeedKind::blanket, {}, {}, {sum(each), "sum(n)", {{"n", each}}},
                                 spares(sum(each), 0, NeedKind::blanket)),
                         fmt::format("keeps the heat in and evens it out, one for each bore of {}", bores),
                         "practice")};
}

std::vector<Need> hole_needs(const std::vector<HoleUse>& holes) {
    std::vector<Need> lines;
    for (const SameDiameter& group : by_diameter(holes)) {
        lines.push_back(hole_need(
            NeedKind::plug_rod, group.diameter, group.holes, 1,
            fmt::format("a piece of copper or carbon rod in each hole before welding ({}); and one spare",
                        group.where)));
        lines.push_back(
            hole_need(NeedKind::drill, group.diameter, {1}, 0, "to reopen the plugged holes after boring"));
        if (sum(group.fittings) > 0)
            lines.push_back(hole_need(NeedKind::fitting, group.diameter, group.fittings, 1,
                                      "heat ruins the old ones; and one spare"));
    }
    return lines;
}

std::vector<Need> insert_needs(const std::vector<InsertUse>& uses, const std::string& source) {
    if (uses.empty())
        return {};
    return {edges_of_kind(NeedKind::rough_edge, uses, &Edges::rough, &Edges::rough_time,
                          "skim, rough and semi-finish cuts", source),
            edges_of_kind(NeedKind::finish_edge, uses, &Edges::finish, &Edges::finish_time,
                          "a fresh one for each finish cut and its spring pass", source)};
}

std::vector<Need> fire_watch_needs(const FireWatch& watch) {
    const std::string how_long =
        watch.periods.empty()
            ? std::string()
            : fmt::format(", {} in all{}", show(watch.total),
                          watch.total > long_watch ? ": more than one can watch, so bring relief" : "");
    const std::string looks =
        watch.checks_for ? fmt::format(", and looks for {} after that", show(watch.checks_for->value))
                         : std::string();
    return {one_of(NeedKind::fire_watch,
                   fmt::format("not the one who welds; from the first flame to {} after the last heat{}{}",
                               show(watch.after.value), how_long, looks),
                   watch.after.source),
            one_of(NeedKind::extinguisher, "in the hand of the fire watch, besides the one on the machine",
                   "practice")};
}

} // namespace ringfill
