#include <ringfill/report/text/frame.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/say/heat_limits.hpp>

namespace ringfill {

std::string view_head(const Plan& plan, const Style& style) {
    return style.strong(wrapped(printable(plan.title), "")) + heat_head(plan, style) + "\n";
}

std::string bore_heading(const BorePlan& bore, const Style& style) {
    const std::string name = printable(bore.name, 60);
    return style.strong(bore.count > 1 ? fmt::format("{}, each of {}", name, bore.count) : name) + '\n';
}

std::string note_list(const Plan& plan, const Style& style) {
    return bullets("NOTES", plan.notes, style);
}

std::string view_end(const Plan& plan, const Style& style) {
    return caution_list(plan, style) + "\n" + note_list(plan, style) + closing_line();
}

} // namespace ringfill
