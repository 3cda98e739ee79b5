#include <ringfill/fault/printable.hpp>

#include <cstdint>

namespace ringfill {
namespace {

constexpr std::size_t longest_character = 4; // bytes

bool continues(std::string_view text, std::size_t i) {
    return i < text.size() && (static_cast<unsigned char>(text[i]) & 0xC0U) == 0x80U;
}

} // namespace

Character character_at(std::string_view text, std::size_t i) {
    const auto lead = static_cast<unsigned char>(text[i]);
    if (lead < 0x80)
        return {lead, 1};
    const std::size_t length = lead >= 0xF5 || lead < 0xC2 ? 0 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (length == 0)
        return {};
    std::uint32_t code = lead & (0xFFU >> (length + 1));
    for (std::size_t k = 1; k < length; ++k) {
        if (!continues(text, i + k))
            return {};
        code = (code << 6U) | (static_cast<unsigned char>(text[i + k]) & 0x3FU);
    }
    const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    const bool no_character = code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF);
    return overlong || no_character ? Character{} : Character{code, length};
}

bool disturbs(std::uint32_t code) {
    const bool control = code < 0x20 || (code >= 0x7F && code < 0xA0);
    constexpr std::uint32_t first_beyond_latin = 0x061C;
    if (code < first_beyond_latin)
        return control;
    const bool separator = code == 0x2028 || code == 0x2029;
    const bool direction = code == 0x061C || code == 0x200E || code == 0x200F ||
                           (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
    const bool invisible = code == 0x200B || code == 0xFEFF || (code >= 0xE0000 && code <= 0xE007F);
    return control || separator || direction || invisible || code == 0xFFFD;
}

std::size_t count_characters(std::string_view utf8) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < utf8.size(); ++count)
        i += static_cast<unsigned char>(utf8[i]) < 0x80 ? 1 : character_at(utf8, i).bytes;
    return count;
}

std::string_view last_characters(std::string_view utf8, std::size_t count) {
    if (const std::size_t most = longest_character * (count + 1); utf8.size() > most) {
        // Only the end of a long text is looked at. A character begins at a byte that continues none, and in
        // any case behind three that do.
        std::size_t begin = utf8.size() - most;
        for (std::size_t i = 1; i < longest_character && continues(utf8, begin); ++i)
            ++begin;
        utf8.remove_prefix(begin);
    }
    for (std::size_t all = count_characters(utf8); all > count; --all)
        utf8.remove_prefix(character_at(utf8, 0).bytes);
    return utf8;
}

std::string printable(std::string_view utf8, std::size_t longest) {
    std::string safe;
    std::size_t count = 0;
    for (std::size_t i = 0; i < utf8.size(); ++count) {
        if (count == longest)
            return safe + "…";
        const Character c = character_at(utf8, i);
        safe += disturbs(c.code) ? std::string_view("\xEF\xBF\xBD") : utf8.substr(i, c.bytes);
        i += c.bytes;
    }
    return safe;
}

std::string in_quotes(std::string_view utf8) {
    return '"' + printable(utf8, 60) + '"';
}

} // namespace ringfill
