#include <algorithm>
#include <cmath>
#include <numbers>

#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/caution/doubt_rules.hpp>
#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// The width of grade IT13, 2.5 times IT11 [ISO 286-1]; nothing for a size past its table.
std::optional<Length> grade_13(Length nominal, const std::vector<SizeStep>& steps) {
    const auto step = ranges::find_if(
        steps, [&](const SizeStep& row) { return nominal > row.over.value && nominal <= row.to.value; });
    if (step == steps.end())
        return std::nullopt;
    const auto* grade_11 = value_named(step->grades_um, "11");
    return grade_11 ? std::optional(millimetres(2.5 * grade_11->value * 1e-3)) : std::nullopt;
}

void judge_limits(DoubtList& doubts, const WornBore& bore, const std::vector<SizeStep>& steps) {
    const auto width = grade_13(bore.finish_diameter, steps);
    if (!bore.size_limits || !width)
        return;
    const auto& [low, high] = *bore.size_limits;
    const auto shown = [&](Length length) { return show_fine(length, doubts.units); };
    if (bore.finish_diameter < low - *width || bore.finish_diameter > high + *width)
        doubts.add("finish_diameter", shown(bore.finish_diameter),
                   fmt::format("near its limits of {} to {}", shown(low), shown(high)));
    if (high - low > *width)
        doubts.add("size_limits", fmt::format("{} to {}", shown(low), shown(high)),
                   fmt::format("no wider than {}", shown(*width)));
}

/// A length that may be ten times off, where that would fit.
void judge_slipped(DoubtList& doubts, const WornBore& bore) {
    const double ratio = (bore.length / bore.finish_diameter).value();
    const bool is_short = ratio < 0.15 && mm(bore.length) < 25;
    const auto fits = [](double slipped) { return slipped >= 0.25 && slipped <= 3; };
    const double like = ratio > 6 ? ratio / 10 : is_short ? ratio * 10 : 0;
    if (fits(like))
        doubts.add("length", show(bore.length, doubts.units),
                   fmt::format("near the finish diameter of {}", show(bore.finish_diameter, doubts.units)),
                   show(like * bore.finish_diameter, doubts.units));
}

/// A number that is one of the other unit: millimetres in a job of inches, or inches in one of millimetres.
void judge_unit(DoubtList& doubts, const char* field, std::optional<Length> length) {
    if (!length)
        return;
    const double in_mm = mm(*length);
    const bool inch = doubts.units == UnitSystem::inch;
    if (in_mm < 5 || in_mm > 1000)
        doubts.add(field, show(*length, doubts.units),
                   fmt::format("{} to {}", show(millimetres(5), doubts.units),
                               show(millimetres(1000), doubts.units)),
                   inch && in_mm > 1000 ? show(millimetres(in_mm / 25.4), UnitSystem::metric)
                   : !inch && in_mm < 5 ? show(millimetres(in_mm * 25.4), UnitSystem::inch)
                                        : "");
}

void judge_faces(DoubtList& doubts, const WornBore& bore) {
    const double finish = bore.finish_diameter.value();
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        const Face& face = bore.faces[i];
        const std::string field = element_path("faces", i);
        doubts.judge(field + ".build", face.build.value(), Usual{0, 0.006}, length_text);
        doubts.judge(field + ".inner", face.inner.value(), Usual{finish, 1.6 * finish}, length_text);
        if (bore.boss_diameter)
            doubts.judge(field + ".outer", face.outer.value(),
                         Usual{finish, 1.02 * bore.boss_diameter->value()}, length_text);
    }
}

void judge_grooves(DoubtList& doubts, const WornBore& bore) {
    const double finish = bore.finish_diameter.value();
    for (std::size_t i = 0; i < bore.grooves.size(); ++i) {
        const Groove& groove = bore.grooves[i];
        const std::string field = element_path("grooves", i);
        const double most = bore.boss_diameter
                                ? std::min(1.3 * finish, bore.boss_diameter->value() - 2 * 0.003)
                                : 1.3 * finish;
        doubts.judge(field + ".diameter", groove.diameter.value(), Usual{finish, most}, length_text);
        doubts.judge(field + ".width", groove.width.value(),
                     Usual{0, std::max(0.015, bore.length.value() / 4)}, length_text);
    }
}

} // namespace

void size_doubts(DoubtList& doubts, const WornBore& bore, const BorePlan& plan,
                 const std::vector<SizeStep>& steps) {
    judge_limits(doubts, bore, steps);
    const double finish = mm(bore.finish_diameter) / 2;
    const double least = mm(plan.survey.smallest.radius);
    const double most = mm(plan.survey.largest.radius);
    const auto shown = [&](double radius_mm) { return show(millimetres(2 * radius_mm), doubts.units); };
    const double near = std::max(3.0, 0.035 * 2 * finish);
    const bool is_far = least - finish > near || finish - most > near;
    if (is_far)
        doubts.add("finish_diameter", show(bore.finish_diameter, doubts.units),
                   fmt::format("a size near the readings, which begin at {}", shown(least)));
    else if (most - finish > std::max(8.0, 0.06 * 2 * finish))
        doubts.add("worn", fmt::format("{} at the widest", shown(most)),
                   fmt::format("less than {} of wear a side",
                               show(millimetres(std::max(8.0, 0.06 * 2 * finish)), doubts.units)));
    else if (mm(plan.build.thickness) > 15)
        doubts.add("worn", fmt::format("{} to build up a side", show(plan.build.thickness, doubts.units)),
                   fmt::format("{} or less", show(millimetres(15), doubts.units)));
}

void length_doubts(DoubtList& doubts, const WornBore& bore, const BorePlan& plan) {
    const double finish = bore.finish_diameter.value();
    judge_unit(doubts, "finish_diameter", bore.finish_diameter);
    judge_unit(doubts, "length", bore.length);
    judge_slipped(doubts, bore);
    doubts.judge("skim", si_number(bore.skim), Usual{0.00015, 0.004}, length_text);
    doubts.judge("stock", bore.stock.value(), Usual{0.0005, 0.005}, length_text);
    if (bore.overhang > Length())
        doubts.judge("overhang", bore.overhang.value(), Usual{0.0004, 0.015}, length_text);
    doubts.judge("boss_diameter", si_number(bore.boss_diameter), Usual{1.15 * finish, 7 * finish},
                 length_text);
    if (bore.worn.offset) {
        const double mean =
            std::sqrt(plan.survey.worn_volume.value() / (std::numbers::pi * bore.length.value()));
        const double wear = mean - finish / 2;
        doubts.judge("worn.offset", bore.worn.offset->value(), Usual{0, 1.5 * wear + 0.0007}, length_text);
    }
    for (std::size_t i = 0; i < bore.attached.size(); ++i)
        doubts.judge(element_path("attached", i) + ".thickness", bore.attached[i].thickness.value(),
                     Usual{0.005, 0.12}, length_text);
    judge_faces(doubts, bore);
    judge_grooves(doubts, bore);
}

} // namespace ringfill
