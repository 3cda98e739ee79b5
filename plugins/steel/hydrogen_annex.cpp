#include "hydrogen_annex.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "carbon_equivalent.hpp"

namespace ringfill::steel {
namespace {

constexpr const char* annex_name = "AWS D1.1 hydrogen-control annex";
constexpr const char* annex_source = "D1.1-annex";

constexpr double grid_limits[] = {0.18, 0.23, 0.28, 0.33, 0.38};       // Pcm is under it
constexpr double index_limits[] = {3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 7.0}; // the index is up to it

/// Less would take away from the index: common practice, no source [ml/100 g].
constexpr double annex_least_hydrogen = 1;

constexpr int high_restraint = 3;
constexpr const char* restraint_words[] = {"low", "medium", "high"};

/// Rows: up to 3/8, 3/4, 1 1/2, 3 in and over; columns: groups A to G; in °F. 0 is printed "< 65". One print
/// of medium, over 3/4 to 1 1/2 in, group A has "< 65", another 65: the higher is taken.
constexpr double least_degF[3][5][7] = {
    {{0, 0, 0, 0, 140, 280, 300},
     {0, 0, 65, 140, 210, 280, 300},
     {0, 0, 65, 175, 230, 280, 300},
     {65, 65, 100, 200, 250, 280, 300},
     {65, 65, 100, 200, 250, 280, 300}},
    {{0, 0, 0, 0, 160, 280, 320},
     {0, 0, 65, 175, 240, 290, 320},
     {65, 65, 165, 230, 280, 300, 320},
     {65, 175, 230, 265, 300, 300, 320},
     {200, 250, 280, 300, 320, 320, 320}},
    {{0, 0, 65, 100, 230, 300, 320},
     {0, 65, 150, 220, 280, 320, 320},
     {65, 185, 240, 280, 300, 320, 320},
     {240, 265, 300, 300, 320, 320, 320},
     {240, 265, 300, 300, 320, 320, 320}},
};

/// Band of a thickness: under 3/8 in, then up to 3/4, 1 1/2 and 3 in, the limit included, and over.
std::size_t band_of(double thickness_in) {
    if (thickness_in < 0.375)
        return 0;
    return thickness_in <= 0.75 ? 1 : thickness_in <= 1.5 ? 2 : thickness_in <= 3 ? 3 : 4;
}

/// A group with the end of the sentence that says how it was found, and why it is only the last one there is.
struct Grouped {
    char group = 'G';
    std::string how;
    std::string past_the_end; ///< empty: within the annex
};

Grouped by_index(double measured_ml_100g, double pcm_used) {
    const double hydrogen = std::max(measured_ml_100g, annex_least_hydrogen);
    const double index = settled(susceptibility_index(pcm_used, hydrogen));
    const std::string by = fmt::format("by the measured hydrogen{}, index {:.2f}",
                                       hydrogen > measured_ml_100g ? ", taken as 1 ml/100 g" : "", index);
    if (const auto group = group_by_index(index))
        return {*group, fmt::format("{}, group {}", by, *group), {}};
    return {'G', fmt::format("{}, taken as its last group G", by),
            fmt::format("index {:.2f} by the measured hydrogen is over its last group, 7.0", index)};
}

Grouped by_grid(const Asked& asked, double pcm_used) {
    const int level = asked.hydrogen_ml_100g ? hydrogen_level(*asked.hydrogen_ml_100g) : 3;
    const std::string unknown =
        asked.hydrogen_ml_100g ? "" : "; hydrogen is not known, taken as uncontrolled";
    if (const auto group = group_by_grid(pcm_used, level))
        return {*group, fmt::format("by its grid, group {}{}", *group, unknown), {}};
    return {'G', fmt::format("past its grid, taken as its last group G{}", unknown),
            fmt::format("Pcm {} % is not under the {} % its grid ends at", show_pct(pcm_used),
                        show_pct(grid_limits[4]))};
}

int restraint_of(const Asked& asked) {
    return asked.restraint == 1.0 ? 1 : asked.restraint == 2.0 ? 2 : high_restraint;
}

/// The temperature of a group.
Figure looked_up(const Asked& asked, double pcm_used, const Grouped& found) {
    constexpr double mm_in_inch = 25.4;
    constexpr double over_the_last_band_in = 3.1;
    const int restraint = restraint_of(asked);
    const double thickness = asked.wall_mm ? settled(*asked.wall_mm / mm_in_inch) : over_the_last_band_in;
    Figure figure;
    figure.name = annex_name;
    figure.source = annex_source;
    figure.inputs = {{"Pcm", pcm_used, "%"}, {"restraint", static_cast<double>(restraint), ""}};
    if (asked.hydrogen_ml_100g)
        figure.inputs.push_back({"H", *asked.hydrogen_ml_100g, "ml/100 g"});
    if (asked.wall_mm)
        figure.inputs.push_back({"thickness", thickness, "in"});
    figure.note = fmt::format("{}; {} restraint{}", found.how, restraint_words[restraint - 1],
                              asked.restraint ? "" : ", since it is not known");
    if (!asked.wall_mm)
        add_note(figure.note, "the wall is not known, taken as over 3 in");
    add_note(figure.note, not_stated(asked.base, "the base metal", pcm_alloys));
    const auto minimum = annex_degF(found.group, restraint, thickness);
    if (!minimum) {
        figure.flags = RF_NONE_NEEDED;
        return figure;
    }
    figure.formula = "(F - 32)*5/9";
    figure.inputs.push_back({"F", *minimum, "°F"});
    set_minimum(figure, (*minimum - 32) * 5 / 9);
    return figure;
}

} // namespace

int hydrogen_level(double hydrogen_ml_100g) {
    return hydrogen_ml_100g < 5 ? 1 : hydrogen_ml_100g < 10 ? 2 : 3;
}

std::optional<char> group_by_grid(double pcm_pct, int level) {
    for (int column = 0; column < 5; ++column)
        if (pcm_pct < grid_limits[column])
            return static_cast<char>('A' + column + level - 1);
    return std::nullopt;
}

double susceptibility_index(double pcm_pct, double hydrogen_ml_100g) {
    return 12 * pcm_pct + std::log10(hydrogen_ml_100g);
}

std::optional<char> group_by_index(double index) {
    for (int group = 0; group < 7; ++group)
        if (index <= index_limits[group])
            return static_cast<char>('A' + group);
    return std::nullopt;
}

std::optional<double> annex_degF(char group, int restraint, double thickness_in) {
    const double found = least_degF[restraint - 1][band_of(thickness_in)][group - 'A'];
    return found > 0 ? std::optional(found) : std::nullopt;
}

Figure hydrogen_annex(const Asked& asked) {
    if (const std::string why = why_not_usable(asked.base); !why.empty()) {
        Figure none = not_usable(annex_name, annex_source, why);
        none.flags |= RF_SECOND_OPINION;
        return none;
    }
    const double pcm_used = settled(pcm_of(asked));
    const Grouped found =
        asked.hydrogen_is_measured ? by_index(*asked.hydrogen_ml_100g, pcm_used) : by_grid(asked, pcm_used);
    Figure figure = looked_up(asked, pcm_used, found);
    figure.flags |= RF_SECOND_OPINION;
    if (!found.past_the_end.empty()) {
        figure.flags |= RF_OUT_OF_COMPOSITION;
        add_note(figure.note, found.past_the_end);
    }
    return figure;
}

} // namespace ringfill::steel
