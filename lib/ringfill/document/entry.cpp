#include <ringfill/document/entry.hpp>

#include <stdexcept>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string Spot::path() const {
    if (!entry)
        return {};
    std::string text = entry->path();
    if (!field.empty())
        text = member_path(text, field);
    if (index != no_index)
        return element_path(text, index);
    return name.data() ? member_path(text, name) : text;
}

void Spot::refuse(std::string reason, std::string remedy, std::string by_hand) const {
    entry->refuse(*value, path(), std::move(reason), std::move(remedy), std::move(by_hand));
}

Entry::Entry(Reading& reading, const Record& record, const Spot& object, bool again)
    : reading_(&reading), record_(&record), spot_(object) {
    if (!again && spot_.value->object())
        check_names();
    else if (!again)
        refuse(fmt::format("is {}, not an object in braces", kind_in_words(*spot_.value)),
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
    for (const Member& member : *spot_.value->object())
        if (!is_known(member.name) && reading_->faults.size() < most_faults) {
            const auto known = record_->fields | ranges::views::transform(&Field::name) |
                               ranges::to<std::vector<std::string>>();
            reading_->faults.push_back(fault_at(reading_->document, member.name_begin, path_of(member.name),
                                                {}, fmt::format("is not a field of {}", record_->name),
                                                suggest(member.name, known)));
        }
    for (const Field& wanted : record_->fields)
        if (wanted.required && !find(wanted))
            refuse_missing(wanted.name, fmt::format("write \"{}\": {}", wanted.name, wanted.sample));
}

const Field& Entry::field(std::string_view name) const {
    if (const Field* known = record_->find(name))
        return *known;
    throw std::logic_error(fmt::format("{} has no field {}", record_->name, name));
}

const Value* Entry::find(const Field& field) const {
    const Value::Object* members = spot_.value->object();
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

void Entry::refuse(const Value& value, std::string path, std::string reason, std::string remedy,
                   std::string by_hand) const {
    if (reading_->faults.size() >= most_faults)
        return;
    const bool speaks = value.text() || value.number();
    if (reading_->by_hand && by_hand.empty() && value.text())
        by_hand = in_quotes(*value.text());
    reading_->faults.push_back(
        reading_->by_hand
            ? fault_at_path(std::move(path), std::move(by_hand), std::move(reason), std::move(remedy))
            : fault_at(reading_->document, value.begin, std::move(path),
                       speaks ? as_written(reading_->document, value) : std::string(), std::move(reason),
                       std::move(remedy)));
}

void Entry::refuse(std::string reason, std::string remedy) const {
    refuse(*spot_.value, path(), std::move(reason), std::move(remedy));
}

void Entry::refuse_missing(std::string_view name, std::string remedy) const {
    refuse(*spot_.value, path_of(name), "is missing", std::move(remedy));
}

void Entry::refuse(std::string_view name, std::string reason, std::string remedy) const {
    const Value* value = find(field(name));
    refuse(value ? *value : *spot_.value, path_of(name), std::move(reason), std::move(remedy));
}

bool Entry::assume(const Field& field) const {
    if (reading_->by_hand && !field.fallback.empty()) // nothing is filled in there
        refuse_missing(field.name, fmt::format("write {}", field.sample));
    else if (!field.fallback.empty())
        reading_->assumed.push_back(
            {path_of(field.name), std::string(field.fallback), std::string(field.fallback_source)});
    return !field.fallback.empty();
}

void Entry::refuse_kind(const Field& field, const Value& value) const {
    const std::string_view wanted = field.shape == Shape::list    ? "a list"
                                    : field.shape == Shape::named ? kind_in_words(Kind::object)
                                                                  : kind_in_words(field.kind);
    spot(field, value)
        .refuse(fmt::format("is {}, not {}", kind_in_words(value), wanted),
                fmt::format("write it like {}", field.sample));
}

std::optional<Entry> Entry::object(const Field& wanted) const {
    const Value* value = find(wanted);
    if (value && value->object())
        return std::optional<Entry>(std::in_place, *reading_, *wanted.record, spot(wanted, *value));
    if (value)
        refuse_kind(wanted, *value);
    return std::nullopt;
}

std::vector<Spot> Entry::elements(const Field& wanted, bool again) const {
    std::vector<Spot> found;
    const Value* value = find(wanted);
    if (!value)
        return found;
    const bool is_list = wanted.shape == Shape::list;
    if (const auto* list = value->list(); list && is_list) {
        for (std::size_t i = 0; i < list->size(); ++i)
            found.push_back({this, wanted.name, &(*list)[i], {}, i});
    } else if (const auto* members = value->object(); members && !is_list) {
        for (const Member& member : *members)
            found.push_back({this, wanted.name, &member.value, member.name});
    } else {
        if (!again)
            refuse_kind(wanted, *value);
        return found;
    }
    if (again || (found.size() >= wanted.least && (!is_list || found.size() <= wanted.most)))
        return found;
    if (!is_list) {
        refuse(wanted.name, "is empty", fmt::format("write {}", wanted.sample));
        return found;
    }
    refuse(wanted.name, fmt::format("has {} of them", found.size()),
           wanted.least == wanted.most ? fmt::format("give {}", wanted.least)
                                       : fmt::format("give {} to {}", wanted.least, wanted.most));
    return {};
}

std::vector<Entry> Entry::objects(const Field& wanted, bool again) const {
    std::vector<Entry> found;
    for (const Spot& object : elements(wanted, again))
        found.emplace_back(*reading_, *wanted.record, object, again);
    return found;
}

void Entry::fill(void* row, const void* row_type) const {
    if (record_->row != row_type)
        throw std::logic_error(fmt::format("the fields of {} fill no such row", record_->name));
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
