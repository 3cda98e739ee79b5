#include <ringfill/units/typed_text.hpp>

#include <algorithm>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string plain_signs(std::string_view typed) {
    std::string plain;
    while (!typed.empty()) {
        const std::string_view character = typed.substr(0, character_at(typed, 0).bytes);
        std::string_view meant = character;
        if (character.size() > 1 || character == "\t") // none of the others is a sign
            for (const Sign& sign : typed_signs)
                if (sign.typed.find(character) != std::string_view::npos)
                    meant = sign.plain;
        plain += meant;
        typed.remove_prefix(character.size());
    }
    const std::size_t first = std::min(plain.find_first_not_of(' '), plain.size());
    return plain.substr(first, plain.find_last_not_of(' ') + 1 - first);
}

} // namespace ringfill
