#include <ringfill/document/described.hpp>

#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>

#include <ringfill/document/in_span.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

std::optional<std::size_t> place_among(std::span<const std::string_view> words, std::string_view word) {
    const auto found = ranges::find(words, word);
    return found == words.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - words.begin()));
}

/// Notes a text, or what is none, that is not among a field's words.
void refuse_word(const Spot& spot, const Field& field) {
    spot.refuse("is not a word used here", suggest(spot.value->text() ? *spot.value->text() : "",
                                                   field.words | ranges::to<std::vector<std::string>>()));
}

} // namespace

std::optional<std::string> Entry::text(const Field& wanted) const {
    if (wanted.kind == Kind::word) {
        const auto place = word_index(wanted);
        return place ? std::optional(std::string(wanted.words[*place])) : std::nullopt;
    }
    const auto* text = held<std::string>(wanted);
    if (!text)
        return !find(wanted) && assume(wanted) ? std::optional(std::string(wanted.fallback)) : std::nullopt;
    const std::size_t bytes = text->size(); // a character at least each: only many are counted
    const std::size_t length =
        static_cast<double>(bytes) > wanted.span.high ? count_characters(*text) : bytes;
    if (in_span(static_cast<double>(length), wanted.span))
        return *text;
    refuse(wanted.name, length == 0 ? "is empty" : "is too long",
           fmt::format("write 1 to {:.0f} characters", wanted.span.high));
    return std::nullopt;
}

std::optional<std::size_t> Entry::word_index(const Field& wanted) const {
    const auto* text = held<std::string>(wanted);
    if (!text)
        return !find(wanted) && assume(wanted) ? place_among(wanted.words, wanted.fallback) : std::nullopt;
    const auto place = place_among(wanted.words, *text);
    if (!place)
        refuse_word(spot(wanted, *find(wanted)), wanted);
    return place;
}

std::optional<double> Spot::number_in(const Field& wanted) const {
    const double* number = value->number();
    if (number && in_span(*number, wanted.span))
        return *number;
    if (number)
        refuse("is out of range", fmt::format("write a number {}", span_in_words(wanted.span, "")),
               fmt::format("{:.9g}", *number));
    else
        refuse(fmt::format("is {}, not a plain number", kind_in_words(*value)),
               value->text() ? "write it without quotes and unit" : "write a number");
    return std::nullopt;
}

std::optional<int> FieldOf<int>::read(const Spot& spot, const Field& field) {
    const auto number = spot.number_in(field);
    if (number && *number == std::floor(*number))
        return static_cast<int>(*number);
    if (number)
        spot.refuse("is not a whole number", "write how many there are");
    return std::nullopt;
}

std::optional<std::string> FieldOf<std::string>::read(const Spot& spot, const Field& field) {
    const std::string* text = spot.value->text();
    const bool is_word = field.kind == Kind::word;
    if (text && (is_word ? place_among(field.words, *text).has_value() : !text->empty()))
        return *text;
    if (is_word)
        refuse_word(spot, field);
    else
        spot.refuse("is not a text", "write it in quotes");
    return std::nullopt;
}

Value record_value(const Record& record, const void* row) {
    Value::Object object;
    object.reserve(record.fields.size());
    for (const Field& field : record.fields) {
        // What no member keeps says the same in every document: its format.
        Value value = field.give                ? field.give(field, row)
                      : field.words.size() == 1 ? Value(field.words.front())
                                                : Value();
        if (!is_absent(value))
            object.push_back({std::string(field.name), std::move(value)});
    }
    return object;
}

} // namespace ringfill
