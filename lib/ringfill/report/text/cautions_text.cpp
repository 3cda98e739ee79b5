#include <ringfill/report/text/cautions_text.hpp>

#include <fmt/format.h>

#include <ringfill/report/text/view.hpp>
#include <ringfill/say/cautions.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {

std::string cautions_text(const Plan& plan, const Style& style) {
    const auto words = [](const auto& source) {
        const auto& [key, at] = source;
        return fmt::format("[{}] {}; {}, {} ({}, {})", key, at.title, at.edition, at.place, at.kind, at.seen);
    };
    return fmt::format("{}Keep clear of what burns: {} all round.\n\n{}\n{}\n{}\n{}{}",
                       view_title(plan, style) + doubt_head(plan, style),
                       show_clear(plan.fire_watch.clear.value, plan.units), style.strong("FIRE WATCH"),
                       wrapped(fire_watch_sentences(plan)), caution_list(plan, style, true),
                       bullets("SOURCES", style, plan.sources, words), closing_line());
}

} // namespace ringfill
