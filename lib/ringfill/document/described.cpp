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
void refuse_word(const Entry& entry, const Value& value, const Field& field, const Spot& spot) {
    entry.refuse(
        value, spot.path(), "is not a word used here",
        suggest(value.text() ? *value.text() : "", field.words | ranges::to<std::vector<std::string>>()));
}

} // namespace

std::optional<std::string> Entry::text(const Field& wanted) const {
    if (wanted.kind == Kind::word) {
        const auto place = word_index(wanted);
        return place ? std::optional(std::string(wanted.words[*place])) : std::nullopt;
    }
    const Value* value = find(wanted);
    if (!value && !wanted.fallback.empty()) {
        assume(wanted);
        return std::string(wanted.fallback);
    }
    value = of_kind(wanted, value && value->text(), value);
    if (!value)
        return std::nullopt;
    const std::size_t bytes = value->text()->size(); // a character at least each: only many are counted
    const std::size_t length =
        static_cast<double>(bytes) > wanted.span.high ? count_characters(*value->text()) : bytes;
    if (!in_span(static_cast<double>(length), wanted.span)) {
        refuse(*value, path_of(wanted.name), length == 0 ? "is empty" : "is too long",
               fmt::format("write 1 to {:.0f} characters", wanted.span.high));
        return std::nullopt;
    }
    return *value->text();
}

std::optional<std::size_t> Entry::word_index(const Field& wanted) const {
    const Value* value = find(wanted);
    if (!value && !wanted.fallback.empty()) {
        assume(wanted);
        return place_among(wanted.words, wanted.fallback);
    }
    value = of_kind(wanted, value && value->text(), value);
    if (!value)
        return std::nullopt;
    const auto place = place_among(wanted.words, *value->text());
    if (!place)
        refuse_word(*this, *value, wanted, spot(wanted));
    return place;
}

std::optional<double> Entry::number_in(const Value& value, const Field& wanted, const Spot& spot) const {
    if (!value.number()) {
        refuse(value, spot.path(), fmt::format("is {}, not a plain number", kind_in_words(value)),
               value.text() ? "write it without quotes and unit" : "write a number");
        return std::nullopt;
    }
    if (!in_span(*value.number(), wanted.span)) {
        refuse(value, spot.path(), "is out of range",
               fmt::format("write a number {}", span_in_words(wanted.span, "")),
               fmt::format("{:.9g}", *value.number()));
        return std::nullopt;
    }
    return *value.number();
}

bool FieldOf<bool>::fill(const Entry& entry, const Field& field, bool& to) {
    if (field.kind == Kind::flag) {
        const Value* value = entry.find(field);
        value = entry.of_kind(field, value && value->flag(), value);
        return take(value ? std::optional(*value->flag()) : std::nullopt, to);
    }
    const auto word = entry.word_index(field);
    return take(word ? std::optional(*word == 1) : std::nullopt, to);
}

std::optional<int> FieldOf<int>::read(const Entry& entry, const Value& value, const Field& field,
                                      const Spot& spot) {
    const auto number = entry.number_in(value, field, spot);
    if (number && *number == std::floor(*number))
        return static_cast<int>(*number);
    if (number)
        entry.refuse(value, spot.path(), "is not a whole number", "write how many there are");
    return std::nullopt;
}

std::optional<std::string> FieldOf<std::string>::read(const Entry& entry, const Value& value,
                                                      const Field& field, const Spot& spot) {
    const std::string* text = value.text();
    const bool is_word = field.kind == Kind::word;
    if (text && (is_word ? place_among(field.words, *text).has_value() : !text->empty()))
        return *text;
    if (is_word)
        refuse_word(entry, value, field, spot);
    else
        entry.refuse(value, spot.path(), "is not a text", "write it in quotes");
    return std::nullopt;
}

Value word_value(const Field& field, std::size_t place) {
    return place < field.words.size() ? field.words[place] : std::string_view();
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
