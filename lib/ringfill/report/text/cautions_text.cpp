#include <ringfill/report/text/cautions_text.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/say/cautions.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

std::string sources_of(const Plan& plan, const Style& style) {
    std::vector<std::string> lines;
    for (const auto& [key, source] : plan.sources)
        lines.push_back(fmt::format("[{}] {}; {}, {} ({}, {})", key, source.title, source.edition,
                                    source.place, source.kind, source.seen));
    return bullets("SOURCES", lines, style);
}

} // namespace

std::string cautions_text(const Plan& plan, const Style& style) {
    std::string text = style.strong(wrapped(printable(plan.title), ""));
    text += fmt::format("Keep clear of what burns: {} all round.\n\n{}\n",
                        show_clear(plan.fire_watch.clear.value, plan.units), style.strong("FIRE WATCH"));
    for (const std::string& sentence : fire_watch_sentences(plan))
        text += wrapped(sentence, "  ");
    text += "\n" + caution_list(plan, style, true) + "\n" + sources_of(plan, style);
    return text + closing_line();
}

} // namespace ringfill
