#include <ringfill/document/described.hpp>

#include <stdexcept>

#include <fmt/format.h>

namespace ringfill {
namespace {

template <class T>
bool take(std::optional<T> found, T& to) {
    if (found)
        to = std::move(*found);
    return found.has_value();
}

} // namespace

void expect_rows(const Entry& entry, const void* row) {
    if (entry.record().row != row)
        throw std::logic_error(fmt::format("the fields of {} fill no such row", entry.record().name));
}

bool FieldOf<std::string>::fill(const Entry& entry, const Field& field, std::string& to) {
    return take(field.kind == Kind::word ? entry.word(field) : entry.text(field), to);
}

bool FieldOf<bool>::fill(const Entry& entry, const Field& field, bool& to) {
    if (field.kind == Kind::flag)
        return take(entry.flag(field), to);
    const auto word = entry.word_index(field);
    if (word)
        to = *word == 1;
    return word.has_value();
}

bool FieldOf<int>::fill(const Entry& entry, const Field& field, int& to) {
    return take(entry.count(field), to);
}

bool FieldOf<double>::fill(const Entry& entry, const Field& field, double& to) {
    return take(entry.number(field), to);
}

bool FieldOf<std::vector<std::string>>::fill(const Entry& entry, const Field& field,
                                             std::vector<std::string>& to) {
    if (field.kind == Kind::word) {
        to = entry.words(field);
        return entry.find(field) != nullptr;
    }
    to.clear();
    for (const auto& [path, value] : entry.elements(field))
        if (value->text() && !value->text()->empty())
            to.push_back(*value->text());
        else
            entry.refuse(*value, path, "is not a text", "write it in quotes");
    return entry.find(field) != nullptr;
}

bool FieldOf<std::vector<std::pair<std::string, double>>>::fill(
    const Entry& entry, const Field& field, std::vector<std::pair<std::string, double>>& to) {
    to = entry.named_numbers(field);
    return entry.find(field) != nullptr;
}

Value FieldOf<std::string>::give(const Field&, const std::string& text) {
    return text.empty() ? Value() : Value(text);
}

Value FieldOf<bool>::give(const Field& field, bool flag) {
    return field.kind == Kind::flag ? Value(flag) : word_value(field, flag ? 1 : 0);
}

Value FieldOf<int>::give(const Field&, int count) {
    return static_cast<double>(count);
}

Value FieldOf<double>::give(const Field&, double number) {
    return number;
}

Value FieldOf<std::vector<std::string>>::give(const Field&, const std::vector<std::string>& texts) {
    Value::List list(texts.begin(), texts.end());
    return list.empty() ? Value() : Value(std::move(list));
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
