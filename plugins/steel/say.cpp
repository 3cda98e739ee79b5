#include "say.hpp"

#include <utility>

#include <fmt/format.h>

namespace ringfill::steel {

void add_note(std::string& note, std::string_view part) {
    if (!note.empty() && !part.empty())
        note += "; ";
    note += part;
}

Figure not_usable(std::string name, std::string source, std::string why) {
    Figure figure;
    figure.flags = RF_NOT_USABLE;
    figure.name = std::move(name);
    figure.source = std::move(source);
    figure.note = std::move(why);
    return figure;
}

void set_minimum(Figure& method, double minimum_degC) {
    method.number = minimum_degC + ice_point_K;
    if (minimum_degC <= hottest_preheat_degC)
        return;
    method.flags |= RF_NO_FIGURE;
    add_note(method.note, fmt::format("its equation gives {:.0f} °C, which is no preheat", minimum_degC));
}

} // namespace ringfill::steel
