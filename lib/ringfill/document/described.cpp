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

std::optional<double> number(const Entry& entry, const Field& field) {
    const Value* value = entry.find(field);
    return value ? entry.number_in(*value, field, entry.spot(field)) : std::nullopt;
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
    if (const double length = static_cast<double>(count_characters(*value->text()));
        !in_span(length, wanted.span)) {
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

bool FieldOf<double>::fill(const Entry& entry, const Field& field, double& to) {
    return take(number(entry, field), to);
}

bool FieldOf<int>::fill(const Entry& entry, const Field& field, int& to) {
    const auto found = number(entry, field);
    const bool is_whole = found && *found == std::floor(*found);
    if (is_whole)
        to = static_cast<int>(*found);
    else if (found)
        entry.refuse(field.name, "is not a whole number", "write how many there are");
    return is_whole;
}

bool FieldOf<std::vector<std::string>>::fill(const Entry& entry, const Field& field,
                                             std::vector<std::string>& to) {
    to.clear();
    for (const auto& [spot, value] : entry.elements(field)) {
        const std::string* text = value->text();
        const bool is_word = field.kind == Kind::word;
        if (text && (is_word ? place_among(field.words, *text).has_value() : !text->empty()))
            to.push_back(*text);
        else if (is_word)
            refuse_word(entry, *value, field, spot);
        else
            entry.refuse(*value, spot.path(), "is not a text", "write it in quotes");
    }
    return entry.find(field) != nullptr;
}

bool FieldOf<std::vector<std::pair<std::string, double>>>::fill(
    const Entry& entry, const Field& field, std::vector<std::pair<std::string, double>>& to) {
    to.clear();
    for (const auto& [spot, value] : entry.elements(field))
        if (const auto one = entry.number_in(*value, field, spot))
            to.emplace_back(spot.name, *one);
    return entry.find(field) != nullptr;
}

Value FieldOf<std::vector<std::string>>::give(const Field&, const std::vector<std::string>& texts) {
    return texts.empty() ? Value() : Value(Value::List(texts.begin(), texts.end()));
}

Value FieldOf<std::vector<std::pair<std::string, double>>>::give(
    const Field&, const std::vector<std::pair<std::string, double>>& numbers) {
    Value::Object object;
    for (const auto& [name, number] : numbers)
        object.push_back({name, number});
    return object.empty() ? Value() : Value(std::move(object));
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
