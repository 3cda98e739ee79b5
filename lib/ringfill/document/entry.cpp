#include <ringfill/document/entry.hpp>

#include <cmath>
#include <stdexcept>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/document/in_span.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

Entry::Entry(Reading& reading, const Value& object, const Record& record, std::string path)
    : reading_(&reading), object_(&object), record_(&record), path_(std::move(path)) {
    if (object.object())
        check_names();
    else
        refuse(object, path_, fmt::format("is {}, not an object in braces", kind_in_words(object)),
               fmt::format("write the fields of {} in braces", record.name));
}

void Entry::check_names() const {
    const auto known = record_->fields |
                       ranges::views::transform([](const Field& f) { return std::string(f.name); }) |
                       ranges::to<std::vector>();
    for (const Member& member : *object_->object())
        if (!record_->find(member.name) && reading_->faults.size() < most_faults)
            reading_->faults.push_back(fault_at(reading_->document, member.name_begin, path_of(member.name),
                                                {}, fmt::format("is not a field of {}", record_->name),
                                                suggest(member.name, known)));
    for (const Field& wanted : record_->fields)
        if (wanted.required && !object_->find(wanted.name))
            refuse(*object_, path_of(wanted.name), "is missing",
                   fmt::format("write \"{}\": {}", wanted.name, wanted.sample));
}

const Field& Entry::field(std::string_view name) const {
    if (const Field* known = record_->find(name))
        return *known;
    throw std::logic_error(fmt::format("{} has no field {}", record_->name, name));
}

const Value* Entry::find(std::string_view name) const {
    return object_->find(field(name).name);
}

void Entry::refuse(const Value& value, std::string path, std::string reason, std::string remedy) const {
    const bool speaks = value.text() || value.number();
    const std::string shown = speaks ? as_written(reading_->document, value) : std::string();
    if (reading_->faults.size() < most_faults)
        reading_->faults.push_back(fault_at(reading_->document, value.begin, std::move(path), shown,
                                            std::move(reason), std::move(remedy)));
}

void Entry::refuse(std::string_view name, std::string reason, std::string remedy) const {
    const Value* value = find(name);
    refuse(value ? *value : *object_, path_of(name), std::move(reason), std::move(remedy));
}

void Entry::assume(const Field& field) const {
    reading_->assumed.push_back(
        {path_of(field.name), std::string(field.fallback), std::string(field.fallback_source)});
}

/// The value if it has the right JSON type, else a fault that says what was expected.
const Value* Entry::of_kind(std::string_view name, bool fits, const Value* value) const {
    if (!value || fits)
        return value;
    const Field& wanted = field(name);
    refuse(*value, path_of(name),
           fmt::format("is {}, not {}", kind_in_words(*value),
                       wanted.shape == Shape::list    ? "a list"
                       : wanted.shape == Shape::named ? kind_in_words(Kind::object)
                                                      : kind_in_words(wanted.kind)),
           fmt::format("write it like {}", wanted.sample));
    return nullptr;
}

std::optional<std::string> Entry::text(std::string_view name) const {
    const Value* value = find(name);
    if (const Field& wanted = field(name); !value && !wanted.fallback.empty()) {
        assume(wanted);
        return std::string(wanted.fallback);
    }
    value = of_kind(name, value && value->text(), value);
    if (!value)
        return std::nullopt;
    if (const double length = static_cast<double>(count_characters(*value->text()));
        !in_span(length, field(name).span)) {
        refuse(*value, path_of(name), length == 0 ? "is empty" : "is too long",
               fmt::format("write 1 to {:.0f} characters", field(name).span.high));
        return std::nullopt;
    }
    return *value->text();
}

std::optional<std::string> Entry::word(std::string_view name) const {
    const Field& wanted = field(name);
    const Value* value = find(name);
    if (!value) {
        if (wanted.fallback.empty())
            return std::nullopt;
        assume(wanted);
        return std::string(wanted.fallback);
    }
    value = of_kind(name, value->text(), value);
    if (!value)
        return std::nullopt;
    if (ranges::find(wanted.words, *value->text()) != wanted.words.end())
        return *value->text();
    refuse(*value, path_of(name), "is not a word used here",
           suggest(*value->text(), wanted.words | ranges::to<std::vector<std::string>>()));
    return std::nullopt;
}

std::vector<std::string> Entry::words(std::string_view name) const {
    const Field& wanted = field(name);
    std::vector<std::string> found;
    for (const auto& [path, value] : elements(name)) {
        const std::string* text = value->text();
        if (text && ranges::find(wanted.words, *text) != wanted.words.end())
            found.push_back(*text);
        else
            refuse(*value, path, "is not a word used here",
                   suggest(text ? *text : "", wanted.words | ranges::to<std::vector<std::string>>()));
    }
    return found;
}

std::optional<bool> Entry::flag(std::string_view name) const {
    const Value* value = find(name);
    value = of_kind(name, value && value->flag(), value);
    return value ? std::optional(*value->flag()) : std::nullopt;
}

std::optional<double> Entry::number_in(const Value& value, const Field& wanted,
                                       const std::string& path) const {
    if (!value.number()) {
        refuse(value, path, fmt::format("is {}, not a plain number", kind_in_words(value)),
               value.text() ? "write it without quotes and unit" : "write a number");
        return std::nullopt;
    }
    if (!in_span(*value.number(), wanted.span)) {
        refuse(value, path, "is out of range",
               fmt::format("write a number {}", span_in_words(wanted.span, "")));
        return std::nullopt;
    }
    return *value.number();
}

std::optional<double> Entry::number(std::string_view name) const {
    const Value* value = find(name);
    return value ? number_in(*value, field(name), path_of(name)) : std::nullopt;
}

std::optional<int> Entry::count(std::string_view name) const {
    const auto found = number(name);
    if (!found)
        return std::nullopt;
    if (*found == std::floor(*found))
        return static_cast<int>(*found);
    refuse(name, "is not a whole number", "write how many there are");
    return std::nullopt;
}

std::vector<std::pair<std::string, double>> Entry::named_numbers(std::string_view name) const {
    std::vector<std::pair<std::string, double>> found;
    const Value* value = find(name);
    value = of_kind(name, value && value->object(), value);
    if (!value)
        return found;
    for (const Member& member : *value->object())
        if (const auto one = number_in(member.value, field(name), member_path(path_of(name), member.name)))
            found.emplace_back(member.name, *one);
    return found;
}

std::optional<Entry> Entry::object(std::string_view name) const {
    const Value* value = find(name);
    value = of_kind(name, value && value->object(), value);
    return value ? std::optional<Entry>(std::in_place, *reading_, *value, *field(name).record, path_of(name))
                 : std::nullopt;
}

std::vector<Entry> Entry::objects(std::string_view name) const {
    std::vector<Entry> found;
    for (const auto& [path, value] : elements(name))
        found.emplace_back(*reading_, *value, *field(name).record, path);
    return found;
}

std::vector<std::pair<std::string, Entry>> Entry::named_objects(std::string_view name) const {
    std::vector<std::pair<std::string, Entry>> found;
    const Value* value = find(name);
    value = of_kind(name, value && value->object(), value);
    if (!value)
        return found;
    if (value->object()->size() < field(name).least)
        refuse(name, "is empty", fmt::format("write {}", field(name).sample));
    for (const Member& member : *value->object())
        found.emplace_back(member.name, Entry(*reading_, member.value, *field(name).record,
                                              member_path(path_of(name), member.name)));
    return found;
}

std::vector<std::pair<std::string, const Value*>> Entry::elements(std::string_view name) const {
    std::vector<std::pair<std::string, const Value*>> found;
    const Field& wanted = field(name);
    const Value* value = find(name);
    value = of_kind(name, value && value->list(), value);
    if (!value)
        return found;
    if (const std::size_t size = value->list()->size(); size < wanted.least || size > wanted.most) {
        refuse(*value, path_of(name), fmt::format("has {} of them", size),
               wanted.least == wanted.most ? fmt::format("give {}", wanted.least)
                                           : fmt::format("give {} to {}", wanted.least, wanted.most));
        return found;
    }
    for (std::size_t i = 0; i < value->list()->size(); ++i)
        found.emplace_back(element_path(path_of(name), i), &(*value->list())[i]);
    return found;
}

} // namespace ringfill
