#include <ringfill/report/text/note_list.hpp>

#include <ringfill/report/text/columns.hpp>

namespace ringfill {

std::string note_list(const Plan& plan, const Style& style) {
    std::string text = style.strong("NOTES") + "\n";
    for (const std::string& note : plan.notes)
        text += wrapped(note, "- ");
    return text;
}

} // namespace ringfill
