#include <ringfill/material/plugin_text.hpp>

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

} // namespace ringfill
