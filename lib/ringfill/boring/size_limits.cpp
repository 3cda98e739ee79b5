#include <ringfill/boring/size_limits.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/map.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Sizes given in inches may differ from a step's end in their last digit [m].
const Length rounding = in_si<Length>(1e-9);

/// The classes that a step knows, for the remedy: "D, E, F, G, H, JS with a grade of 5, 6, 7".
std::string known_classes(const SizeStep& step) {
    std::vector<std::string> letters = step.deviations_um | ranges::views::keys | ranges::to<std::vector>();
    letters.insert(letters.end(), {"H", "JS"});
    std::sort(letters.begin(), letters.end());
    return fmt::format("known here for this size: {} with a grade of {}, such as \"H9\"",
                       listed(letters, ", "), listed(step.grades_um | ranges::views::keys, ", "));
}

constexpr std::string_view otherwise = "or give the limits themselves as size_limits";

} // namespace

std::optional<SizeLimits> size_limits(const WornBore& bore, const std::vector<SizeStep>& steps,
                                      std::vector<Fault>& faults) {
    if (bore.size_limits) {
        const auto& [low, high] = *bore.size_limits;
        return SizeLimits{.low = low, .high = high, .tolerance_um = (high - low).value() * 1e6};
    }
    if (!bore.size_class)
        return std::nullopt;
    const std::string& typed = *bore.size_class;
    const auto refuse = [&](std::string reason, const std::string& remedy) {
        faults.push_back(fault_at_path(bore.path + ".size_class", in_quotes(typed), std::move(reason),
                                       fmt::format("{}, {}", remedy, otherwise)));
        return std::nullopt;
    };
    const auto step = ranges::find_if(steps, [&](const SizeStep& size_step) {
        return bore.finish_diameter > size_step.over.value + rounding &&
               bore.finish_diameter <= size_step.to.value + rounding;
    });
    if (step == steps.end())
        return refuse(
            fmt::format("has no limits here for a finish diameter of {:.6g} mm", mm(bore.finish_diameter)),
            steps.empty() ? std::string("the table of size limits is empty")
                          : fmt::format("the table reaches from over {:.6g} mm to {:.6g} mm",
                                        mm(steps.front().over.value), mm(steps.back().to.value)));
    const std::size_t digits = std::min(typed.find_first_of("0123456789"), typed.size());
    const std::string letters = typed.substr(0, digits);
    const Sourced<double>* grade = value_named(step->grades_um, typed.substr(digits));
    const Sourced<double>* deviation = value_named(step->deviations_um, letters);
    if (!grade || (!deviation && letters != "H" && letters != "JS"))
        return refuse("is not a class of holes known here", known_classes(*step));
    const double lower_um = deviation ? deviation->value : letters == "JS" ? -grade->value / 2 : 0;
    const Length low = bore.finish_diameter + in_si<Length>(lower_um * 1e-6);
    return SizeLimits{low,          low + in_si<Length>(grade->value * 1e-6),     typed, lower_um,
                      grade->value, deviation ? deviation->source : grade->source};
}

Length diameter_to_bore(Length finish_diameter, const std::optional<SizeLimits>& limits) {
    return limits ? std::clamp(finish_diameter, limits->low, limits->high) : finish_diameter;
}

Length growth(Length diameter, double expansion, Temperature at) {
    return expansion * (deg_c(at) - reference_temperature_degC) * diameter;
}

} // namespace ringfill
