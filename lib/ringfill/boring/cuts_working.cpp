#include <ringfill/boring/boring_working.hpp>

#include <algorithm>
#include <iterator>

#include <range/v3/algorithm/count_if.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// How deep one cut is; the first of the skim and the first after the weld take the remainder.
Working depth_working(const BoreWeld& weld, const BoringPlan& plan, const Cutting& cutting,
                      std::size_t index) {
    const Cut& cut = plan.cuts[index];
    const Sourced<Length>& most = plan.settings.rough_cut;
    const Input rough{"a_r", in_mm(most.value)};
    const Input semi{"a_s", in_mm(cutting.semi_finish_cut.value)};
    const Input finish{"a_f", in_mm(cutting.finish_cut.value)};
    const Input stock{"S", in_mm(plan.final_diameter / 2.0 - plan.crown_radius)};
    const auto count_of = [&](CutKind first, CutKind other) {
        return Input{"k", ranges::count_if(plan.cuts, [&](const Cut& one) {
                         return one.kind == first || one.kind == other;
                     })};
    };
    const auto depth = [&](const char* formula, std::vector<Input> inputs,
                           const std::string& source = "own") {
        return worked("depth_mm", formula, std::move(inputs), in_mm(cut.depth), source);
    };
    // The first two rough cuts are alike, and the first is no whole one: they share the remainder.
    const auto first =
        std::adjacent_find(plan.cuts.begin(), plan.cuts.end(), [&](const Cut& skin, const Cut& second) {
            return skin.kind == CutKind::skin && second.kind == CutKind::rough && second.depth < most.value;
        });
    const bool shares = first != plan.cuts.end();
    const std::vector<Input> remainder{stock, finish, semi, count_of(CutKind::skin, CutKind::rough), rough};
    switch (cut.kind) {
    case CutKind::skim:
        return depth("(r_s - r_min)/k", {{"r_s", in_mm(weld.build.skim_radius)},
                                         {"r_min", in_mm(weld.survey.smallest.radius)},
                                         count_of(CutKind::skim, CutKind::skim)});
    case CutKind::semi_finish:
        return depth("min(S - a_f, a_s)", {stock, finish, semi}, cutting.semi_finish_cut.source);
    case CutKind::finish:
        return depth("min(S, a_f)", {stock, finish}, cutting.finish_cut.source);
    case CutKind::spring:
        return depth("0*a_f", {finish}, "practice");
    case CutKind::skin:
    case CutKind::rough:
        break;
    }
    if (shares && (cut.kind == CutKind::skin || &cut == &*std::next(first)))
        return depth("(S - a_f - a_s - (k - 2)*a_r)/2", remainder, most.source);
    return cut.kind == CutKind::skin ? depth("S - a_f - a_s - (k - 1)*a_r", remainder, most.source)
                                     : depth("1*a_r", {rough}, most.source);
}

/// Diameters before and after a cut: where the cuts began, and what those before it took.
std::vector<Working> diameter_working(const BoreWeld& weld, const BoringPlan& plan, std::size_t index) {
    const Cut& cut = plan.cuts[index];
    const bool skim = cut.kind == CutKind::skim;
    const Input start =
        skim ? Input{"r_min", in_mm(weld.survey.smallest.radius)} : Input{"r_c", in_mm(plan.crown_radius)};
    std::vector<double> depths;
    for (std::size_t i = 0; i < index; ++i)
        if ((plan.cuts[i].kind == CutKind::skim) == skim)
            depths.push_back(mm(plan.cuts[i].depth));
    return {depths.empty() ? worked("diameter_from_mm", "2*" + start.symbol, {start}, in_mm(cut.from))
                           : worked("diameter_from_mm", "2*(" + start.symbol + " + sum(a))",
                                    {start, {"a", depths, "mm"}}, in_mm(cut.from)),
            worked("diameter_to_mm", "D + 2*a", {{"D", in_mm(cut.from)}, {"a", in_mm(cut.depth)}},
                   in_mm(cut.to))};
}

std::vector<Working> facing_working(const WornBore& bore, const FacePad& pad, const Face& face,
                                    const Facing& facing, const BoringPlan& plan, const Cutting& cutting) {
    const Input overhang{"o", in_mm(bore.overhang)};
    const Input feed{"f", in_mm(facing.feed)};
    return {
        worked("depth_mm", "s + e + delta",
               {{"s", in_mm(bore.stock)}, {"e", in_mm(pad.extra_build)}, {"delta", in_mm(pad.bead.valley)}},
               in_mm(facing.depth)),
        worked("cuts", "ceil(t/a_r - 1e-9)",
               {{"t", in_mm(facing.depth)}, {"a_r", in_mm(plan.settings.rough_cut.value)}}, facing.cuts),
        rpm_working(plan.settings, facing.bar, face.outer + 2.0 * bore.overhang),
        taken("feed_mm", feed, cutting.facing_feed.source),
        worked("time_s", "60*k*((D_o - D_i)/2 + 2*o)/(f*n)",
               {{"k", facing.cuts},
                {"D_o", in_mm(face.outer)},
                {"D_i", in_mm(face.inner)},
                overhang,
                feed,
                {"n", in_rev_min(facing.bar.used)}},
               in_seconds(facing.time))};
}

} // namespace

std::vector<Working> cuts_working(const WornBore& bore, const BoreWeld& weld, const BoringPlan& plan,
                                  const Cutting& cutting) {
    const Input turning{"n", in_rev_min(plan.bar.used)};
    const Input feed{"f", in_mm(plan.settings.feed.value)};
    const Input length{"L", in_mm(bore.length)};
    const Input overhang{"o", in_mm(bore.overhang)};
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        const Cut& cut = plan.cuts[i];
        std::vector<Working> of_cut{depth_working(weld, plan, cutting, i)};
        append(of_cut, diameter_working(weld, plan, i));
        of_cut.push_back(taken("rpm", turning));
        of_cut.push_back(taken("feed_mm", feed, plan.settings.feed.source));
        of_cut.push_back(cut.kind == CutKind::skim
                             ? worked("time_s", "60*L/(f*n)", {length, feed, turning}, in_seconds(cut.time))
                             : worked("time_s", "60*(L + 2*o)/(f*n)", {length, overhang, feed, turning},
                                      in_seconds(cut.time)));
        append(work, under(element_path("cuts", i), std::move(of_cut)));
    }
    for (std::size_t i = 0; i < plan.facing.size(); ++i)
        append(work, under(element_path("facing", i), facing_working(bore, weld.faces[i], bore.faces[i],
                                                                     plan.facing[i], plan, cutting)));
    return work;
}

} // namespace ringfill
