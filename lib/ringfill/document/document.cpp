#include <ringfill/document/document.hpp>

#include <algorithm>
#include <utility>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/excerpt.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// The member or element that a path begins with, or null; takes it off the path. A name of the user's
/// choosing may hold points and brackets: the longest name that fits is meant.
const Value* take_step(const Value& here, std::string_view& path) {
    if (path.front() == '[') {
        const std::size_t close = std::min(path.find(']'), path.size());
        const auto index = static_cast<std::size_t>(whole_number(path.substr(1, close - 1)).value_or(-1));
        path.remove_prefix(std::min(close + 1, path.size()));
        const auto* list = here.list();
        return list && index < list->size() ? &(*list)[index] : nullptr;
    }
    if (path.front() == '.')
        path.remove_prefix(1);
    const Member* found = nullptr;
    if (const auto* members = here.object())
        for (const Member& member : *members) {
            const std::size_t size = member.name.size();
            const bool ends =
                path.size() == size || (path.size() > size && (path[size] == '.' || path[size] == '['));
            if (ends && path.starts_with(member.name) && (!found || size > found->name.size()))
                found = &member;
        }
    if (found)
        path.remove_prefix(found->name.size());
    return found ? &found->value : nullptr;
}

} // namespace

Fault fault_at(const Document& document, std::size_t offset, std::string path, std::string value,
               std::string reason, std::string remedy) {
    Place place = place_at(document.text, offset);
    place.file = document.file;
    place.path = std::move(path);
    return {std::move(place), std::move(value), std::move(reason), std::move(remedy),
            excerpt(document.text, offset)};
}

std::string as_written(const Document& document, const Value& value) {
    if (value.text())
        return in_quotes(*value.text());
    if (value.number() || value.flag())
        return printable(std::string_view(document.text).substr(value.begin, value.end - value.begin), 60);
    return std::string(kind_in_words(value));
}

const Value& value_at(const Document& document, std::string_view path) {
    const Value* here = &document.root;
    while (const Value* next = path.empty() ? nullptr : take_step(*here, path))
        here = next;
    return *here;
}

std::vector<Fault> locate(const Document& document, std::vector<Fault> faults) {
    for (Fault& fault : faults) {
        if (fault.place.line > 0)
            continue;
        const std::size_t offset = value_at(document, fault.place.path).begin;
        fault = fault_at(document, offset, fault.place.path, fault.value, fault.reason, fault.remedy);
    }
    return faults;
}

} // namespace ringfill
