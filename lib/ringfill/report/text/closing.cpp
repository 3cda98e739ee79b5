#include <ringfill/report/text/closing.hpp>

#include <ringfill/report/text/columns.hpp>

namespace ringfill {

std::string_view closing() {
    return "Local codes, the approved procedure and licensed practice prevail over everything here.";
}

std::string closing_line() {
    return "\n" + wrapped(closing(), "");
}

} // namespace ringfill
