#include <ringfill/material/plugin_text.hpp>

#include <algorithm>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::optional<std::size_t> not_utf8_at(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const Character character = character_at(text, i);
        if (character.code == Character{}.code && character.bytes == 1)
            return i + 1;
        i += character.bytes;
    }
    return std::nullopt;
}

bool is_clean(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const Character character = character_at(text, i);
        if (disturbs(character.code))
            return false;
        i += character.bytes;
    }
    return true;
}

bool is_family_name(std::string_view name) {
    const auto lower = [](char c) { return c >= 'a' && c <= 'z'; };
    return !name.empty() && name.size() <= 40 && lower(name.front()) &&
           std::all_of(name.begin(), name.end(),
                       [&](char c) { return lower(c) || (c >= '0' && c <= '9') || c == '_'; });
}

} // namespace ringfill
