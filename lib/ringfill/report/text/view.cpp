#include <ringfill/report/text/view.hpp>

#include <functional>
#include <utility>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/say/cautions.hpp>
#include <ringfill/say/heat_limits.hpp>

namespace ringfill {
namespace {

constexpr std::string_view caution_times[] = {"BEFORE THE WORK", "DURING IT", "AFTER IT"}; // as When

constexpr std::size_t longest_names_shown = 22; // of what a caution is about

std::string head_lines(const Sentences& sentences, const Style& style) {
    return listed(sentences, "", [&](const Sentence& sentence) {
        const std::string lines = wrapped({sentence});
        return sentence.stands == Stands::stop ? style.strong(lines) : lines;
    });
}

} // namespace

std::string view_title(const Plan& plan, const Style& style, std::size_t longest) {
    return style.strong(wrapped(printable(plan.title, longest), ""));
}

std::string heat_head(const Plan& plan, const Style& style) {
    return head_lines(head_sentences(plan), style);
}

std::string doubt_head(const Plan& plan, const Style& style) {
    return head_lines(doubt_sentences(plan), style);
}

std::string caution_list(const Plan& plan, const Style& style, bool with_sources) {
    std::string text;
    for (const When when : {When::before, When::during, When::after}) {
        const std::string list = listed(plan.cautions, "", [&](const Caution& caution) {
            if (caution.applies != Applies::yes || caution.when != when)
                return std::string();
            return wrapped(fmt::format("{}: {} ({}){}",
                                       printable(names_of(caution.about), longest_names_shown), caution.text,
                                       caution.because, with_sources ? " " + source_keys(caution) : ""),
                           "! ");
        });
        const auto head = fmt::format("CAUTIONS {}", caution_times[static_cast<std::size_t>(when)]);
        if (!list.empty())
            text += fmt::format("{}{}\n{}", text.empty() ? "" : "\n", style.strong(head), list);
    }
    const std::string open = listed(not_stated(plan.cautions), "", [](const std::string& sentence) {
        return wrapped(printable(sentence, 500), "? ");
    });
    return open.empty() ? text
                        : fmt::format("{}\n{}\n{}", text, style.strong("NOT STATED IN THE JOB, CHECK"), open);
}

std::string closing_line() {
    return "\n" + wrapped(closing(), "");
}

std::string whole_view(const Plan& plan, const Style& style, const std::string& matter) {
    return view_title(plan, style) + heat_head(plan, style) + "\n" + matter + caution_list(plan, style) +
           "\n" + bullets("NOTES", style, plan.notes, std::identity()) + closing_line();
}

std::string bore_by_bore(const Plan& plan, const Style& style,
                         const std::function<std::string(const BorePlan&)>& of_bore,
                         const std::string& after) {
    const auto told = [&](const BorePlan& bore) {
        const std::string each = bore.count > 1 ? fmt::format(", each of {}", bore.count) : "";
        return style.strong(printable(bore.name, 60) + each) + "\n" + of_bore(bore) + "\n";
    };
    return whole_view(plan, style, listed(plan.bores, "", told) + after);
}

} // namespace ringfill
