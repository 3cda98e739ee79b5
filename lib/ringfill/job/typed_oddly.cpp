#include <ringfill/job/typed_oddly.hpp>

#include <cctype>
#include <cstdlib>
#include <string_view>

#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Whether a measure in inches, or without a unit, has a fraction that no rule of an inch shows.
bool has_odd_fraction(std::string_view text) {
    if (text.empty() || !is_digit(text.front()))
        return false;
    const std::size_t slash = text.find('/');
    if (slash == std::string_view::npos || slash + 1 == text.size() || !is_digit(text[slash + 1]) ||
        !is_digit(text[slash - 1]))
        return false;
    const std::size_t end = text.find_first_not_of("0123456789", slash + 1);
    const std::string_view unit = end == std::string_view::npos ? std::string_view() : text.substr(end);
    const bool is_inch = unit.find_first_not_of(' ') == std::string_view::npos ||
                         unit.find("in") != std::string_view::npos ||
                         unit.find('"') != std::string_view::npos || unit.find("″") != std::string_view::npos;
    const int denominator = std::atoi(std::string(text.substr(slash + 1, 4)).c_str());
    const bool on_a_rule = denominator >= 1 && denominator <= 64 && (denominator & (denominator - 1)) == 0;
    return is_inch && !on_a_rule;
}

/// The letter of a temperature's scale, "180 degC"; 0 where there is none.
char scale_of(const Value* value) {
    return value && value->text() && !value->text()->empty() ? value->text()->back() : '\0';
}

void walk(const Value& value, const std::string& path, std::vector<TypedOddly>& found) {
    if (value.text() && has_odd_fraction(*value.text()))
        found.push_back({path, in_quotes(*value.text()), "a fraction of 2, 4, 8, 16, 32 or 64"});
    if (const Value::List* list = value.list())
        for (std::size_t i = 0; i < list->size(); ++i)
            walk((*list)[i], element_path(path, i), found);
    if (!value.object())
        return;
    const char minimum = scale_of(value.find("preheat_min"));
    const char maximum = scale_of(value.find("interpass_max"));
    if (minimum && maximum && minimum != maximum)
        found.push_back({member_path(path, "interpass_max"), in_quotes(*value.find("interpass_max")->text()),
                         "the scale of preheat_min, " + in_quotes(*value.find("preheat_min")->text())});
    for (const Member& member : *value.object())
        if (member.name != "title" && member.name != "name" && member.name != "reference")
            walk(member.value, member_path(path, member.name), found);
}

} // namespace

std::vector<TypedOddly> typed_oddly(const Document& document) {
    std::vector<TypedOddly> found;
    walk(document.root, "", found);
    return found;
}

} // namespace ringfill
