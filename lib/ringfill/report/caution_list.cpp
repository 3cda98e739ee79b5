#include <ringfill/report/caution_list.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/columns.hpp>

namespace ringfill {

std::string caution_list(const Plan& plan, const Style& style) {
    std::string text = style.strong("CAUTIONS") + "\n";
    for (const Caution& caution : plan.cautions)
        text += wrapped(fmt::format("{}: {} ({})", printable(caution.about, longest_name_shown), caution.text,
                                    caution.because),
                        "! ");
    return text;
}

} // namespace ringfill
