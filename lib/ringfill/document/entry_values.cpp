#include <ringfill/document/entry.hpp>

#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>

#include <ringfill/document/in_span.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::optional<std::string> Entry::text(const Field& wanted) const {
    const Value* value = find(wanted);
    if (!value && !wanted.fallback.empty()) {
        assume(wanted);
        return std::string(wanted.fallback);
    }
    value = of_kind(wanted, value && value->text(), value);
    if (!value)
        return std::nullopt;
    if (const double length = static_cast<double>(count_characters(*value->text()));
        !in_span(length, wanted.span)) {
        refuse(*value, path_of(wanted.name), length == 0 ? "is empty" : "is too long",
               fmt::format("write 1 to {:.0f} characters", wanted.span.high));
        return std::nullopt;
    }
    return *value->text();
}

namespace {

std::optional<std::size_t> place_among(std::span<const std::string_view> words, std::string_view word) {
    const auto found = ranges::find(words, word);
    if (found == words.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - words.begin());
}

std::string suggest_word(std::string_view typed, std::span<const std::string_view> words) {
    return suggest(typed, words | ranges::to<std::vector<std::string>>());
}

} // namespace

std::optional<std::size_t> Entry::word_index(const Field& wanted) const {
    const Value* value = find(wanted);
    if (!value) {
        if (wanted.fallback.empty())
            return std::nullopt;
        assume(wanted);
        return place_among(wanted.words, wanted.fallback);
    }
    value = of_kind(wanted, value->text(), value);
    if (!value)
        return std::nullopt;
    const auto place = place_among(wanted.words, *value->text());
    if (!place)
        refuse(*value, path_of(wanted.name), "is not a word used here",
               suggest_word(*value->text(), wanted.words));
    return place;
}

std::optional<std::string> Entry::word(const Field& wanted) const {
    const auto place = word_index(wanted);
    return place ? std::optional(std::string(wanted.words[*place])) : std::nullopt;
}

std::vector<std::string> Entry::words(const Field& wanted) const {
    std::vector<std::string> found;
    for (const auto& [path, value] : elements(wanted)) {
        const std::string* text = value->text();
        if (text && place_among(wanted.words, *text))
            found.push_back(*text);
        else
            refuse(*value, path, "is not a word used here", suggest_word(text ? *text : "", wanted.words));
    }
    return found;
}

std::optional<bool> Entry::flag(const Field& wanted) const {
    const Value* value = find(wanted);
    value = of_kind(wanted, value && value->flag(), value);
    return value ? std::optional(*value->flag()) : std::nullopt;
}

std::optional<double> Entry::number_in(const Value& value, const Field& wanted, const Spot& spot) const {
    if (!value.number()) {
        refuse(value, spot.path(), fmt::format("is {}, not a plain number", kind_in_words(value)),
               value.text() ? "write it without quotes and unit" : "write a number");
        return std::nullopt;
    }
    if (!in_span(*value.number(), wanted.span)) {
        const std::string remedy = fmt::format("write a number {}", span_in_words(wanted.span, ""));
        if (reading_->by_hand)
            refuse_shown(spot.path(), fmt::format("{:.9g}", *value.number()), "is out of range", remedy);
        else
            refuse(value, spot.path(), "is out of range", remedy);
        return std::nullopt;
    }
    return *value.number();
}

std::optional<double> Entry::number(const Field& wanted) const {
    const Value* value = find(wanted);
    return value ? number_in(*value, wanted, spot(wanted)) : std::nullopt;
}

std::optional<int> Entry::count(const Field& wanted) const {
    const auto found = number(wanted);
    if (!found)
        return std::nullopt;
    if (*found == std::floor(*found))
        return static_cast<int>(*found);
    refuse(wanted.name, "is not a whole number", "write how many there are");
    return std::nullopt;
}

std::vector<std::pair<std::string, double>> Entry::named_numbers(const Field& wanted) const {
    std::vector<std::pair<std::string, double>> found;
    const Value* value = find(wanted);
    value = of_kind(wanted, value && value->object(), value);
    if (!value)
        return found;
    for (const Member& member : *value->object())
        if (const auto one =
                number_in(member.value, wanted, {.entry = this, .field = wanted.name, .name = member.name}))
            found.emplace_back(member.name, *one);
    return found;
}

} // namespace ringfill
