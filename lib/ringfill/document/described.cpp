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

} // namespace ringfill
