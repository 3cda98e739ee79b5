#include <ringfill/report/text/caution_list.hpp>

#include <algorithm>
#include <iterator>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/columns.hpp>

namespace ringfill {
namespace {

constexpr std::pair<std::string_view, std::string_view> times[] = {
    {"before", "CAUTIONS BEFORE THE WORK"}, {"during", "CAUTIONS DURING IT"}, {"after", "CAUTIONS AFTER IT"}};

} // namespace

std::string source_keys(const Caution& caution) {
    std::vector<std::string> keys = {caution.source};
    for (const std::string& more : caution.more_sources)
        if (std::find(keys.begin(), keys.end(), more) == keys.end())
            keys.push_back(more);
    return fmt::format("[{}]", fmt::join(keys, "] ["));
}

std::string to_check(const Caution& caution) {
    return caution.about == "the job" ? caution.check : fmt::format("{}: {}", caution.about, caution.check);
}

std::vector<OpenField> open_fields(const std::vector<Caution>& cautions) {
    std::vector<OpenField> fields;
    for (const Caution& caution : cautions) {
        if (caution.applies == "yes")
            continue;
        auto known = std::find_if(fields.begin(), fields.end(),
                                  [&](const OpenField& one) { return one.field == caution.field; });
        if (known == fields.end())
            known = fields.insert(known, {caution.field, {}});
        if (std::none_of(known->cautions.begin(), known->cautions.end(),
                         [&](const Caution* one) { return to_check(*one) == to_check(caution); }))
            known->cautions.push_back(&caution);
    }
    return fields;
}

std::vector<std::string> not_stated(const std::vector<Caution>& cautions) {
    std::vector<std::string> sentences;
    for (const OpenField& open : open_fields(cautions)) {
        std::string list;
        for (const Caution* caution : open.cautions)
            list += fmt::format("{}{}", list.empty() ? "" : ", ", to_check(*caution));
        sentences.push_back(fmt::format("{} ({})", list, open.field));
    }
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
