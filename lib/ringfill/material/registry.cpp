#include <ringfill/material/registry.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/join.hpp>
#include <range/v3/view/transform.hpp>

#include <fmt/format.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

template <class Row>
std::vector<std::string> full_names(const Registry& registry, std::vector<Row> Family::*rows) {
    std::vector<std::string> names;
    for (const Family& family : registry.families)
        for (const Row& row : family.*rows)
            names.push_back(fmt::format("{}/{}", family.name, row.name));
    return names;
}

template <class Row>
const Row* find_row(const Registry& registry, std::vector<Row> Family::*rows, const std::string& name,
                    std::string_view what, const std::string& path, std::vector<Fault>& faults) {
    for (const Family& family : registry.families)
        if (name.size() > family.name.size() && name.starts_with(family.name) &&
            name[family.name.size()] == '/')
            for (const Row& row : family.*rows)
                if (name.substr(family.name.size() + 1) == row.name)
                    return &row;
    faults.push_back(fault_at_path(path, in_quotes(name), fmt::format("is not a known {}", what),
                                   suggest(name, full_names(registry, rows))));
    return nullptr;
}

} // namespace

Registry read_registry(const Shelf& shelf, const Bibliography& sources) {
    Registry registry;
    for (const std::string& name : family_names(shelf))
        registry.families.push_back(
            read_family(name, table_files(shelf, "families/" + name + ".json"), sources));
    return registry;
}

const Filler* find_filler(const Registry& registry, const std::string& name, const std::string& path,
                          std::vector<Fault>& faults) {
    return find_row(registry, &Family::fillers, name, "filler", path, faults);
}

const Base* find_base(const Registry& registry, const std::string& name, const std::string& path,
                      std::vector<Fault>& faults) {
    return find_row(registry, &Family::bases, name, "base metal", path, faults);
}

} // namespace ringfill
