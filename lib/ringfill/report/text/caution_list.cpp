#include <ringfill/report/text/caution_list.hpp>

#include <utility>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/say/cautions.hpp>

namespace ringfill {
namespace {

constexpr std::pair<When, std::string_view> times[] = {{When::before, "CAUTIONS BEFORE THE WORK"},
                                                       {When::during, "CAUTIONS DURING IT"},
                                                       {When::after, "CAUTIONS AFTER IT"}};

} // namespace

std::string caution_list(const Plan& plan, const Style& style, bool with_sources) {
    std::string text;
    for (const auto& [when, heading] : times) {
        std::string list;
        for (const Caution& caution : plan.cautions)
            if (caution.applies == Applies::yes && caution.when == when)
                list += wrapped(fmt::format("{}: {} ({}){}",
                                            printable(names_of(caution.about), longest_name_shown),
                                            caution.text, caution.because,
                                            with_sources ? " " + source_keys(caution) : std::string()),
                                "! ");
        if (!list.empty())
            text += fmt::format("{}{}\n{}", text.empty() ? "" : "\n", style.strong(heading), list);
    }
    std::string open;
    for (const std::string& sentence : not_stated(plan.cautions))
        open += wrapped(printable(sentence, 500), "? ");
    if (!open.empty())
        text += fmt::format("\n{}\n{}", style.strong("NOT STATED IN THE JOB, CHECK"), open);
    return text;
}

} // namespace ringfill
