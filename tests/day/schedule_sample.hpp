#pragma once

#include <string>
#include <vector>

#include <fmt/format.h>

#include <ringfill/day/schedule.hpp>

namespace ringfill::testing {

inline Time minutes(double m) {
    return in_si<Time>(m * 60);
}

inline const Calendar ten_hours{minutes(7 * 60), minutes(600)};

inline WorkStep step(Step what, double m) {
    return {what, minutes(m)};
}

/// Survey, then welding with one stop, then a rest, then boring.
inline BoreWork bore(const std::string& name, double stop, double rest) {
    return {name,
            {{{step(steps::survey, 10), step(steps::plug_holes, 10), step(steps::skim, 20)}},
             {{step(steps::preheat, 30), step(steps::weld, 30), step(steps::wait_too_hot, stop),
               step(steps::weld, 30)},
              true,
              steps::cool_to_rough,
              minutes(rest)},
             {{step(steps::rough, 40)}}}};
}

inline LineWork line(std::vector<BoreWork> bores) {
    return {"root", {{step(steps::set_up_bar, 60)}}, std::move(bores), step(steps::take_off_bar, 20)};
}

inline std::string told(const Schedule& schedule) {
    std::string text;
    for (const DayEntry& entry : schedule.entries)
        text += fmt::format("{:.0f}-{:.0f} {}{}{}{}\n", entry.from.value() / 60, entry.to.value() / 60,
                            entry.bore, entry.bore.empty() ? "" : " ", words_of(entry),
                            entry.night ? " (night)" : "");
    return text;
}

inline JobWork work_on(std::vector<BoreWork> bores) {
    return {step(steps::unload, 30), {line(std::move(bores))}, step(steps::pack, 30)};
}

inline Schedule day_of_line(std::vector<BoreWork> bores, Turns turns, double change_over = 20) {
    return lay_out(work_on(std::move(bores)), ten_hours, minutes(change_over), turns);
}

inline const Calendar round_the_clock{minutes(7 * 60), minutes(1440)};

} // namespace ringfill::testing
