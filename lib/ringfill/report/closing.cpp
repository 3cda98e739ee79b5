#include <ringfill/report/closing.hpp>

namespace ringfill {

std::string_view closing() {
    return "Local codes, the approved procedure and licensed practice prevail over everything here.";
}

} // namespace ringfill
