#include <ringfill/document/document.hpp>

#include <charconv>
#include <utility>

#include <ringfill/fault/excerpt.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// Takes the next step off a path: a name up to '.' or '[', or an index between brackets.
struct Step {
    std::string_view name;
    std::size_t index = 0;
    bool is_index = false;
};

Step take_step(std::string_view& path) {
    if (!path.empty() && path.front() == '.')
        path.remove_prefix(1);
    Step step;
    if (!path.empty() && path.front() == '[') {
        const std::size_t close = std::min(path.find(']'), path.size());
        std::from_chars(path.data() + 1, path.data() + close, step.index);
        step.is_index = true;
        path.remove_prefix(std::min(close + 1, path.size()));
        return step;
    }
    step.name = path.substr(0, path.find_first_of(".["));
    path.remove_prefix(step.name.size());
    return step;
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
    while (!path.empty()) {
        const Step step = take_step(path);
        const Value* next = nullptr;
        if (!step.is_index)
            next = here->find(step.name);
        else if (const auto* list = here->list(); list && step.index < list->size())
            next = &(*list)[step.index];
        if (!next)
            break;
        here = next;
    }
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
