#include <ringfill/boring/boring_working.hpp>

#include <algorithm>
#include <iterator>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// How deep one cut is; the first of the skim and the first after the weld take the remainder.
Working depth_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting,
                      std::size_t index) {
    const Cut& cut = plan.cuts[index];
    const Input rough{"a_r", mm(plan.settings.rough_cut.value), "mm"};
    const Input semi{"a_s", mm(cutting.semi_finish_cut.value), "mm"};
    const Input finish{"a_f", mm(cutting.finish_cut.value), "mm"};
    const Input stock{"S", mm(plan.final_diameter / 2.0 - plan.crown_radius), "mm"};
    const auto of_kinds = [&](CutKind first, CutKind other) {
        double count = 0;
        for (const Cut& one : plan.cuts)
            count += one.kind == first || one.kind == other ? 1 : 0;
        return Input{"k", count};
    };
    const auto depth = [&](std::string formula, std::vector<Input> inputs, const std::string& source) {
        return Working{"depth_mm", std::move(formula), std::move(inputs), mm(cut.depth), "mm", source};
    };
    // The first two rough cuts are alike, and the first is no whole one: they share the remainder.
    const auto first =
        std::adjacent_find(plan.cuts.begin(), plan.cuts.end(), [&](const Cut& skin, const Cut& second) {
            return skin.kind == CutKind::skin && second.kind == CutKind::rough &&
                   second.depth < plan.settings.rough_cut.value;
        });
    const bool shares = first != plan.cuts.end();
    const std::vector<Input> remainder{stock, finish, semi, of_kinds(CutKind::skin, CutKind::rough), rough};
    const char* halves = "(S - a_f - a_s - (k - 2)*a_r)/2";
    switch (cut.kind) {
    case CutKind::skim:
        return depth("(r_s - r_min)/k",
                     {{"r_s", mm(welded.build.skim_radius), "mm"},
                      {"r_min", mm(welded.survey.smallest.radius), "mm"},
                      of_kinds(CutKind::skim, CutKind::skim)},
                     "own");
    case CutKind::skin:
        if (shares)
            return depth(halves, remainder, plan.settings.rough_cut.source);
        return depth("S - a_f - a_s - (k - 1)*a_r",
                     {stock, finish, semi, of_kinds(CutKind::skin, CutKind::rough), rough},
                     plan.settings.rough_cut.source);
    case CutKind::semi_finish:
        return depth("min(S - a_f, a_s)", {stock, finish, semi}, cutting.semi_finish_cut.source);
    case CutKind::finish:
        return depth("min(S, a_f)", {stock, finish}, cutting.finish_cut.source);
    case CutKind::spring:
        return depth("0*a_f", {finish}, "practice");
    case CutKind::rough:
        break;
    }
    if (shares && &cut == &*std::next(first))
        return depth(halves, remainder, plan.settings.rough_cut.source);
    return depth("1*a_r", {rough}, plan.settings.rough_cut.source);
}

/// Diameters before and after a cut: where the cuts began, and what those before it took.
std::vector<Working> diameter_working(const WeldedBore& welded, const BoringPlan& plan, std::size_t index) {
    const Cut& cut = plan.cuts[index];
    const bool skim = cut.kind == CutKind::skim;
    const Input start = skim ? Input{"r_min", mm(welded.survey.smallest.radius), "mm"}
                             : Input{"r_c", mm(plan.crown_radius), "mm"};
    std::vector<double> depths;
    for (std::size_t i = 0; i < index; ++i)
        if ((plan.cuts[i].kind == CutKind::skim) == skim)
            depths.push_back(mm(plan.cuts[i].depth));
    std::vector<Working> work;
    if (depths.empty())
        work.push_back({"diameter_from_mm", "2*" + start.symbol, {start}, mm(cut.from), "mm", "own"});
    else
        work.push_back({"diameter_from_mm",
                        "2*(" + start.symbol + " + sum(a))",
                        {start, {"a", depths, "mm"}},
                        mm(cut.from),
                        "mm",
                        "own"});
    work.push_back({"diameter_to_mm",
                    "D + 2*a",
                    {{"D", mm(cut.from), "mm"}, {"a", mm(cut.depth), "mm"}},
                    mm(cut.to),
                    "mm",
                    "own"});
    return work;
}

} // namespace

std::vector<Working> cuts_working(const WeldedBore& welded, const BoringPlan& plan, const Cutting& cutting) {
    std::vector<Working> work;
    const Input turning{"n", rev_min(plan.bar.used), "rev/min"};
    const Input feed{"f", mm(plan.settings.feed.value), "mm"};
    const Input length{"L", mm(welded.bore.length), "mm"};
    const Input overhang{"o", mm(welded.bore.overhang), "mm"};
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        const Cut& cut = plan.cuts[i];
        std::vector<Working> one{depth_working(welded, plan, cutting, i)};
        append(one, diameter_working(welded, plan, i));
        one.push_back({"rpm", "1*n", {turning}, rev_min(plan.bar.used), "rev/min", "own"});
        one.push_back(
            {"feed_mm", "1*f", {feed}, mm(plan.settings.feed.value), "mm", plan.settings.feed.source});
        one.push_back(
            cut.kind == CutKind::skim
                ? Working{"time_s", "60*L/(f*n)", {length, feed, turning}, cut.time.value(), "s", "own"}
                : Working{"time_s",
                          "60*(L + 2*o)/(f*n)",
                          {length, overhang, feed, turning},
                          cut.time.value(),
                          "s",
                          "own"});
        append(work, under(element_path("cuts", i), std::move(one)));
    }
    return work;
}

std::vector<Working> facing_working(const WeldedBore& welded, const BoringPlan& plan,
                                    const Cutting& cutting) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < plan.facing.size(); ++i) {
        const Facing& facing = plan.facing[i];
        const Face& face = welded.bore.faces[i];
        const FacePad& pad = welded.faces[i];
        const Input overhang{"o", mm(welded.bore.overhang), "mm"};
        const Input outer{"D_o", mm(face.outer), "mm"};
        const Input feed{"f", mm(facing.feed), "mm"};
        std::vector<Working> one = {
            {"depth_mm",
             "s + e + delta",
             {{"s", mm(welded.bore.stock), "mm"},
              {"e", mm(pad.extra_build), "mm"},
              {"delta", mm(pad.bead.valley), "mm"}},
             mm(facing.depth),
             "mm",
             "own"},
            {"cuts",
             "ceil(t/a_r - 1e-9)",
             {{"t", mm(facing.depth), "mm"}, {"a_r", mm(plan.settings.rough_cut.value), "mm"}},
             static_cast<double>(facing.cuts),
             "",
             "own"},
            rpm_working(plan.settings, facing.bar, face.outer + 2.0 * welded.bore.overhang),
            {"feed_mm", "1*f", {feed}, mm(facing.feed), "mm", cutting.facing_feed.source},
            {"time_s",
             "60*k*((D_o - D_i)/2 + 2*o)/(f*n)",
             {{"k", static_cast<double>(facing.cuts)},
              outer,
              {"D_i", mm(face.inner), "mm"},
              overhang,
              feed,
              {"n", rev_min(facing.bar.used), "rev/min"}},
             facing.time.value(),
             "s",
             "own"}};
        append(work, under(element_path("facing", i), std::move(one)));
    }
    return work;
}

} // namespace ringfill
