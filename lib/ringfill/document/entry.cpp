#include <ringfill/document/entry.hpp>

#include <stdexcept>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string Spot::path() const {
    if (!entry)
        return whole;
    std::string text = entry->path();
    if (!field.empty())
        text = member_path(text, field);
    if (index != no_index)
        return element_path(text, index);
    return name.data() ? member_path(text, name) : text;
}

Entry::Entry(Again, Reading& reading, const Value& object, const Record& record, Spot spot)
    : reading_(&reading), object_(&object), record_(&record), spot_(std::move(spot)) {}

Entry::Entry(Reading& reading, const Value& object, const Record& record, Spot spot)
    : Entry(Again{}, reading, object, record, std::move(spot)) {
    if (object.object())
        check_names();
    else
        refuse(fmt::format("is {}, not an object in braces", kind_in_words(object)),
               fmt::format("write the fields of {} in braces", record.name));
}

void Entry::check_names() const {
    std::size_t next = 0;
    const auto is_known = [&](std::string_view name) {
        for (std::size_t i = 0; i < record_->fields.size(); ++i, ++next) {
            next = next < record_->fields.size() ? next : 0;
            if (record_->fields[next].name == name)
                return true;
        }
        return false;
    };
    for (const Member& member : *object_->object())
        if (!is_known(member.name) && reading_->faults.size() < most_faults) {
            std::vector<std::string> known;
            for (const Field& field : record_->fields)
                known.emplace_back(field.name);
            reading_->faults.push_back(fault_at(reading_->document, member.name_begin, path_of(member.name),
                                                {}, fmt::format("is not a field of {}", record_->name),
                                                suggest(member.name, known)));
        }
    for (const Field& wanted : record_->fields)
        if (wanted.required && !find(wanted))
            refuse(*object_, path_of(wanted.name), "is missing",
                   fmt::format("write \"{}\": {}", wanted.name, wanted.sample));
}

const Field& Entry::field(std::string_view name) const {
    if (const Field* known = record_->find(name))
        return *known;
    throw std::logic_error(fmt::format("{} has no field {}", record_->name, name));
}

const Value* Entry::find(const Field& field) const {
    const Value::Object* members = object_->object();
    if (!members)
        return nullptr;
    for (std::size_t i = 0; i < members->size(); ++i) {
        const std::size_t here = (next_member_ + i) % members->size();
        if ((*members)[here].name == field.name) {
            next_member_ = here + 1;
            return &(*members)[here].value;
        }
    }
    return nullptr;
}

Spot Entry::spot_of(const Field& field, std::size_t index) const {
    return {.entry = this, .field = field.name, .index = index};
}

void Entry::refuse_shown(std::string path, std::string shown, std::string reason, std::string remedy) const {
    if (reading_->faults.size() < most_faults)
        reading_->faults.push_back(
            fault_at_path(std::move(path), std::move(shown), std::move(reason), std::move(remedy)));
}

void Entry::refuse(const Value& value, std::string path, std::string reason, std::string remedy) const {
    if (reading_->by_hand)
        return refuse_shown(std::move(path), value.text() ? in_quotes(*value.text()) : std::string(),
                            std::move(reason), std::move(remedy));
    const bool speaks = value.text() || value.number();
    const std::string shown = speaks ? as_written(reading_->document, value) : std::string();
    if (reading_->faults.size() < most_faults)
        reading_->faults.push_back(fault_at(reading_->document, value.begin, std::move(path), shown,
                                            std::move(reason), std::move(remedy)));
}

void Entry::refuse(std::string reason, std::string remedy) const {
    refuse(*object_, path(), std::move(reason), std::move(remedy));
}

void Entry::refuse_missing(std::string_view name, std::string remedy) const {
    refuse(*object_, path_of(name), "is missing", std::move(remedy));
}

void Entry::refuse(std::string_view name, std::string reason, std::string remedy) const {
    const Value* value = find(name);
    refuse(value ? *value : *object_, path_of(name), std::move(reason), std::move(remedy));
}

void Entry::assume(const Field& field) const {
    if (reading_->by_hand) // nothing is filled in there
        return refuse_shown(path_of(field.name), {}, "is missing", fmt::format("write {}", field.sample));
    reading_->assumed.push_back(
        {path_of(field.name), std::string(field.fallback), std::string(field.fallback_source)});
}

/// The value if it has the right JSON type, else a fault that says what was expected.
const Value* Entry::of_kind(const Field& wanted, bool fits, const Value* value) const {
    if (!value || fits)
        return value;
    refuse(*value, path_of(wanted.name),
           fmt::format("is {}, not {}", kind_in_words(*value),
                       wanted.shape == Shape::list    ? "a list"
                       : wanted.shape == Shape::named ? kind_in_words(Kind::object)
                                                      : kind_in_words(wanted.kind)),
           fmt::format("write it like {}", wanted.sample));
    return nullptr;
}

std::optional<Entry> Entry::object(const Field& wanted) const {
    const Value* value = find(wanted);
    value = of_kind(wanted, value && value->object(), value);
    return value ? std::optional<Entry>(std::in_place, *reading_, *value, *wanted.record, spot(wanted))
                 : std::nullopt;
}

std::vector<Entry> Entry::objects(const Field& wanted) const {
    std::vector<Entry> found;
    const Value* value = find(wanted);
    if (wanted.shape == Shape::list) {
        if (value && is_list_of_right_size(wanted, *value))
            for (std::size_t i = 0; i < value->list()->size(); ++i)
                found.emplace_back(*reading_, (*value->list())[i], *wanted.record, spot_of(wanted, i));
        return found;
    }
    value = of_kind(wanted, value && value->object(), value);
    if (!value)
        return found;
    if (value->object()->size() < wanted.least)
        refuse(wanted.name, "is empty", fmt::format("write {}", wanted.sample));
    for (const Member& member : *value->object())
        found.emplace_back(*reading_, member.value, *wanted.record,
                           Spot{.entry = this, .field = wanted.name, .name = member.name});
    return found;
}

std::vector<Entry> Entry::objects_again(std::string_view name) const {
    const Field& wanted = field(name);
    std::vector<Entry> found;
    const Value* value = find(wanted);
    if (value && value->list())
        for (std::size_t i = 0; i < value->list()->size(); ++i)
            found.push_back(
                Entry(Again{}, *reading_, (*value->list())[i], *wanted.record, spot_of(wanted, i)));
    else if (value && value->object() && wanted.shape == Shape::named)
        for (const Member& member : *value->object())
            found.push_back(Entry(Again{}, *reading_, member.value, *wanted.record,
                                  {.entry = this, .field = wanted.name, .name = member.name}));
    return found;
}

std::vector<std::pair<std::string, Entry>> Entry::named_objects(std::string_view name) const {
    std::vector<std::pair<std::string, Entry>> found;
    for (Entry& one : objects(field(name))) {
        std::string its_name(one.name());
        found.emplace_back(std::move(its_name), std::move(one));
    }
    return found;
}

bool Entry::is_list_of_right_size(const Field& wanted, const Value& value) const {
    if (!of_kind(wanted, value.list() != nullptr, &value))
        return false;
    const std::size_t size = value.list()->size();
    if (size >= wanted.least && size <= wanted.most)
        return true;
    refuse(value, path_of(wanted.name), fmt::format("has {} of them", size),
           wanted.least == wanted.most ? fmt::format("give {}", wanted.least)
                                       : fmt::format("give {} to {}", wanted.least, wanted.most));
    return false;
}

std::vector<std::pair<std::string, const Value*>> Entry::elements(const Field& wanted) const {
    std::vector<std::pair<std::string, const Value*>> found;
    const Value* value = find(wanted);
    if (value && is_list_of_right_size(wanted, *value))
        for (std::size_t i = 0; i < value->list()->size(); ++i)
            found.emplace_back(spot_of(wanted, i).path(), &(*value->list())[i]);
    return found;
}

void Entry::fill(void* row) const {
    for (std::size_t i = 0; i < record_->fields.size(); ++i) {
        const Field& field = record_->fields[i];
        const std::size_t faults = reading_->faults.size();
        if (field.fill && field.fill(*this, field, row) && reading_->faults.size() == faults)
            read_ |= std::uint64_t{1} << i;
    }
    if (record_->check)
        record_->check(*this, row);
}

bool Entry::is_read(std::string_view name) const {
    const auto place = static_cast<std::size_t>(&field(name) - record_->fields.data());
    return (read_ >> place & 1U) != 0;
}

} // namespace ringfill
