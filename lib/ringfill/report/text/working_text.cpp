#include <ringfill/report/text/working_text.hpp>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/working_words.hpp>

namespace ringfill {

std::string working_text(const Plan& plan, const Style& style) {
    const auto told = [](const Working& work) {
        return wrapped(fmt::format("{} = {} [{}]", work.figure, value_text(work), work.source), "- ") +
               wrapped(work.formula, "    = ") + wrapped(inputs_of(work), "    ");
    };
    return fmt::format("{} ({} figures)\n{}{}", style.strong("WORKING"), plan.working.size(),
                       listed(plan.working, "", told), closing_line());
}

} // namespace ringfill
