#include <ringfill/report/caution_list.hpp>

#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/columns.hpp>

namespace ringfill {
namespace {

constexpr std::pair<std::string_view, std::string_view> times[] = {
    {"before", "CAUTIONS BEFORE THE WORK"}, {"during", "CAUTIONS DURING IT"}, {"after", "CAUTIONS AFTER IT"}};

std::string keys_of(const Caution& caution) {
    std::vector<std::string> keys = {caution.source};
    for (const std::string& more : caution.more_sources)
        if (std::find(keys.begin(), keys.end(), more) == keys.end())
            keys.push_back(more);
    return fmt::format(" [{}]", fmt::join(keys, ", "));
}

} // namespace

std::vector<std::string> not_stated(const std::vector<Caution>& cautions) {
    std::vector<std::pair<std::string, std::vector<std::string>>> by_field;
    for (const Caution& caution : cautions) {
        if (caution.applies == "yes")
            continue;
        auto known = std::find_if(by_field.begin(), by_field.end(),
                                  [&](const auto& one) { return one.first == caution.field; });
        if (known == by_field.end())
            known = by_field.insert(known, {caution.field, {}});
        const std::string check =
            caution.about == "the job" ? caution.check : fmt::format("{}: {}", caution.about, caution.check);
        if (std::find(known->second.begin(), known->second.end(), check) == known->second.end())
            known->second.push_back(check);
    }
    std::vector<std::string> sentences;
    for (const auto& [field, checks] : by_field)
        sentences.push_back(fmt::format("{} ({})", fmt::join(checks, ", "), field));
    return sentences;
}

std::string caution_list(const Plan& plan, const Style& style, bool with_sources) {
    std::string text;
    for (const auto& [when, heading] : times) {
        std::string list;
        for (const Caution& caution : plan.cautions)
            if (caution.applies == "yes" && caution.when == when)
                list += wrapped(fmt::format("{}: {} ({}){}", printable(caution.about, longest_name_shown),
                                            caution.text, caution.because,
                                            with_sources ? keys_of(caution) : std::string()),
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
