#include <ringfill/material/registry.hpp>

#include <algorithm>
#include <filesystem>
#include <stdexcept>

#include <range/v3/algorithm/sort.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/search.hpp>

namespace ringfill {
namespace {

std::string stem_of(const std::string& file) {
    return std::filesystem::path(file).stem().string();
}

std::string table_name(const std::string& family) {
    return "families/" + family + ".json";
}

std::vector<Plugin> load_plugins(Registry& registry, const std::vector<std::string>& folders) {
    const PluginSearch search = find_plugins(folders);
    for (const Fault& fault : search.refused)
        registry.missing.push_back({"", fault});
    std::vector<Plugin> plugins;
    for (const std::string& file : search.files)
        try {
            plugins.push_back(load_plugin(file));
        } catch (const Faulty& faulty) {
            registry.missing.push_back({stem_of(file), faulty.faults().front()});
        }
    return plugins;
}

/// Which of two plugins of one family is right nobody can tell, so neither is taken.
void part_with_twins(Registry& registry, std::vector<Plugin>& plugins) {
    std::vector<Plugin> alone;
    for (const Plugin& plugin : plugins) {
        const auto twin = std::find_if(plugins.begin(), plugins.end(), [&](const Plugin& other) {
            return other.family == plugin.family && other.file != plugin.file;
        });
        if (twin == plugins.end())
            alone.push_back(plugin);
        else
            registry.missing.push_back(
                {plugin.family, fault_in_file(plugin.file,
                                              fmt::format("is a plugin of the family {}, and so is {}",
                                                          plugin.family, printable(twin->file)),
                                              "keep one of the two")});
    }
    plugins = std::move(alone);
}

bool is_missing(const Registry& registry, const std::string& name) {
    return std::any_of(registry.missing.begin(), registry.missing.end(),
                       [&](const MissingFamily& missing) { return missing.name == name; });
}

/// The family as its plugin alone brings it; a broken table is told and leaves nothing.
std::optional<Family> carried_family(Registry& registry, const Plugin& plugin, const Document& carried,
                                     const Bibliography& sources) {
    try {
        return read_family(plugin.family, {carried}, sources);
    } catch (const Faulty& faulty) {
        registry.missing.push_back({plugin.family, faulty.faults().front()});
        return std::nullopt;
    }
}

void add_plugin_family(Registry& registry, const Shelf& shelf, Plugin plugin, const Bibliography& sources) {
    std::vector<Document> files;
    try {
        files.push_back(parse(plugin.file + " (its table)", plugin.table, Origin::table));
    } catch (const Faulty& faulty) {
        registry.missing.push_back({plugin.family, faulty.faults().front()});
        return;
    }
    std::optional<Family> family = carried_family(registry, plugin, files.front(), sources);
    if (!family)
        return;
    for (TableText& table : table_texts(shelf, table_name(plugin.family)))
        if (table.text != plugin.table) // the very table that the plugin was built with adds nothing
            files.push_back(parse(table.file, std::move(table.text), Origin::table));
    if (files.size() > 1)
        family = read_family(plugin.family, files, sources);
    family->plugin = std::move(plugin);
    registry.families.push_back(std::move(*family));
}

void add_table_family(Registry& registry, const Shelf& shelf, const std::string& name,
                      const Bibliography& sources) {
    Family family = read_family(name, table_files(shelf, table_name(name)), sources);
    if (!family.has_rules)
        registry.families.push_back(std::move(family));
    else if (!is_missing(registry, name))
        registry.missing.push_back(
            {name,
             fault_in_file(family.files.front(), "needs the rules of its plugin, which is not there",
                           fmt::format("install {}.family again or name its folder with --plugins", name))});
}

template <class Row>
std::vector<std::string> full_names(const Registry& registry, std::vector<Row> Family::*rows) {
    std::vector<std::string> names;
    for (const Family& family : registry.families)
        for (const Row& row : family.*rows)
            names.push_back(fmt::format("{}/{}", family.name, row.name));
    return names;
}

std::string family_part(const std::string& name) {
    return name.substr(0, name.find('/'));
}

constexpr std::size_t most_told = 12;

/// The one of another family that is called so, or the nearest; of few names all, of many where they are.
std::string which_meant(const std::string& name, const std::vector<std::string>& known) {
    const std::string called = '/' + name.substr(name.find('/') + 1);
    const auto other = std::find_if(known.begin(), known.end(),
                                    [&](const std::string& one) { return one.ends_with(called); });
    if (called != "/" && other != known.end())
        return suggest(*other, known);
    return nearest(name, known) || known.size() <= most_told
               ? suggest(name, known)
               : fmt::format("ringfill materials lists all {}", known.size());
}

void refuse_missing(const Registry& registry, const std::string& name) {
    for (const MissingFamily& missing : registry.missing)
        if (missing.name == family_part(name))
            throw Faulty(Origin::table, missing.why);
}

template <class Row>
const Row* find_row(const Registry& registry, std::vector<Row> Family::*rows, const std::string& name,
                    std::string_view what, const std::string& path, std::vector<Fault>& faults) {
    for (const Family& family : registry.families)
        if (family_part(name) == family.name && name.size() > family.name.size())
            for (const Row& row : family.*rows)
                if (name.substr(family.name.size() + 1) == row.name)
                    return &row;
    refuse_missing(registry, name);
    faults.push_back(fault_at_path(path, in_quotes(name), fmt::format("is not a known {}", what),
                                   which_meant(name, full_names(registry, rows))));
    return nullptr;
}

} // namespace

Registry read_registry(const Shelf& shelf, const std::vector<std::string>& plugin_folders,
                       const Bibliography& sources) {
    Registry registry;
    std::vector<Plugin> plugins = load_plugins(registry, plugin_folders);
    part_with_twins(registry, plugins);
    for (Plugin& plugin : plugins)
        add_plugin_family(registry, shelf, std::move(plugin), sources);
    for (const std::string& name : family_names(shelf))
        if (std::none_of(registry.families.begin(), registry.families.end(),
                         [&](const Family& family) { return family.name == name; }))
            add_table_family(registry, shelf, name, sources);
    ranges::sort(registry.families, {}, &Family::name);
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

const Family& family_of(const Registry& registry, const std::string& name) {
    for (const Family& family : registry.families)
        if (family.name == family_part(name))
            return family;
    throw std::logic_error("the family of a base metal that was not found");
}

} // namespace ringfill
