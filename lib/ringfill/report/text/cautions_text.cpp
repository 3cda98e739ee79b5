#include <ringfill/report/text/cautions_text.hpp>

#include <fmt/format.h>

#include <ringfill/report/text/view.hpp>
#include <ringfill/say/cautions.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {

std::string cautions_text(const Plan& plan, const Style& style) {
    std::string text = view_title(plan, style);
    text += fmt::format("Keep clear of what burns: {} all round.\n\n{}\n",
                        show_clear(plan.fire_watch.clear.value, plan.units), style.strong("FIRE WATCH"));
    for (const std::string& sentence : fire_watch_sentences(plan))
        text += wrapped(sentence);
    std::vector<std::string> sources;
    for (const auto& [key, source] : plan.sources)
        sources.push_back(fmt::format("[{}] {}; {}, {} ({}, {})", key, source.title, source.edition,
                                      source.place, source.kind, source.seen));
    return text + "\n" + caution_list(plan, style, true) + "\n" + bullets("SOURCES", sources, style) +
           closing_line();
}

} // namespace ringfill
