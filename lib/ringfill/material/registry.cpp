#include <ringfill/material/registry.hpp>

#include <filesystem>
#include <map>
#include <mutex>
#include <optional>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/algorithm/sort.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/search.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {
namespace {

std::string stem_of(const std::string& file) {
    return std::filesystem::path(file).stem().string();
}

std::string table_name(const std::string& family) {
    return "families/" + family + ".json";
}

/// Another plugin of the same family. Which of the two is right nobody can tell, so neither is taken.
const Plugin* twin_of(const Plugin& plugin, const std::vector<const Plugin*>& plugins) {
    const auto twin = ranges::find_if(plugins, [&](const Plugin* other) {
        return other->family == plugin.family && other->file != plugin.file;
    });
    return twin == plugins.end() ? nullptr : *twin;
}

const Family* named(const Registry::Families& families, const std::string& name) {
    const auto found = ranges::find(families, name, &Family::name);
    return found == families.end() ? nullptr : &found->get();
}

bool is_among(const std::vector<MissingFamily>& missing, const std::string& name) {
    return ranges::contains(missing, name, &MissingFamily::name);
}

} // namespace

/// Reads under a lock: what is asked for twice is read once, and a plugin is loaded once.
class Registry::Reader {
  public:
    /// What was read: of one name, or all.
    struct Read {
        Families ready; ///< by name
        std::vector<MissingFamily> missing;
        bool may_pass = false; ///< a file could not be read just now, as when too many are open
    };

    Reader(Shelf shelf, std::vector<std::string> folders, Bibliography sources)
        : shelf_(std::move(shelf)), sources_(std::move(sources)), plugins_(find_plugins(folders)),
          on_shelf_(family_names(shelf_)), has_own_(shelf_.folders.size() > 1 || folders.size() > 1) {}

    explicit Reader(std::vector<Family> families) {
        for (Family& family : families)
            families_.emplace(family.name, std::move(family));
        for (const auto& [name, family] : families_)
            kept_[all].ready.push_back(family);
    }

    /// Of one name, or of all where that tells as much. Throws what reading threw, each time.
    Read read(const std::string& name) {
        const std::lock_guard turn(turn_);
        const bool alone = !has_own_ && (ranges::contains(on_shelf_, name) ||
                                         ranges::contains(plugins_.files, name, stem_of));
        const std::string key = alone ? name : all;
        if (const auto found = kept_.find(key); found != kept_.end())
            return found->second;
        Read read = read_anew(key);
        if (!read.may_pass)
            kept_.emplace(key, read);
        return read;
    }

    static constexpr const char* all = "";
    bool has_own() const { return has_own_; }

  private:
    Read read_anew(const std::string& only) {
        Read read;
        const auto wanted = [&](const std::string& name) { return only == all || name == only; };
        if (only == all)
            for (const Fault& fault : plugins_.refused)
                read.missing.push_back({"", fault});
        std::vector<const Plugin*> plugins;
        for (const std::string& file : plugins_.files)
            if (const std::string stem = stem_of(file); wanted(stem) || !ranges::contains(on_shelf_, stem))
                if (const Plugin* plugin = loaded(file, read))
                    plugins.push_back(plugin);
        for (const Plugin* plugin : plugins)
            if (const Plugin* twin = twin_of(*plugin, plugins))
                read.missing.push_back(
                    {plugin->family, fault_in_file(plugin->file,
                                                   fmt::format("is a plugin of the family {}, and so is {}",
                                                               plugin->family, printable(twin->file)),
                                                   "keep one of the two")});
        for (const Plugin* plugin : plugins)
            if (wanted(plugin->family) && !twin_of(*plugin, plugins))
                add(read, plugin->file, [&] { return family_of_plugin(read, *plugin); });
        for (const std::string& name : on_shelf_)
            if (wanted(name) && !named(read.ready, name))
                add(read, name, [&] { return family_of_tables(read, name); });
        ranges::sort(read.ready, {}, &Family::name);
        return read;
    }

    const Plugin* loaded(const std::string& file, Read& read) {
        try {
            if (!loaded_.contains(file))
                loaded_.emplace(file, load_plugin(file));
            return &loaded_.at(file);
        } catch (const Faulty& faulty) {
            read.missing.push_back({stem_of(file), faulty.faults().front(), true});
            read.may_pass = read.may_pass || faulty.origin() == Origin::file;
            return nullptr;
        }
    }

    /// The family that a plugin's file or a table's name brings, made when it is first asked for.
    template <class Make>
    void add(Read& read, const std::string& brought_by, const Make& make) {
        if (!families_.contains(brought_by))
            if (std::optional<Family> made = make())
                families_.emplace(brought_by, std::move(*made));
        if (const auto found = families_.find(brought_by); found != families_.end())
            read.ready.push_back(found->second);
    }

    std::optional<Family> family_of_plugin(Read& read, const Plugin& plugin) {
        const auto carried = [&] {
            std::vector<Document> tables; // a list in braces would copy the document
            tables.push_back(parse(plugin.file + " (its table)", plugin.table, Origin::table));
            return tables;
        };
        Family family;
        try {
            family = read_family(plugin.family, carried(), sources_);
        } catch (const Faulty& faulty) {
            read.missing.push_back({plugin.family, faulty.faults().front()});
            return std::nullopt;
        }
        std::vector<Document> more;
        for (Document& table : table_texts(shelf_, table_name(plugin.family)))
            if (table.text != plugin.table) // the very table that the plugin was built with adds nothing
                more.push_back(parse(table.file, std::move(table.text), Origin::table));
        if (!more.empty()) {
            std::vector<Document> tables = carried();
            append(tables, std::move(more));
            family = read_family(plugin.family, std::move(tables), sources_);
        }
        family.plugin = plugin;
        return family;
    }

    std::optional<Family> family_of_tables(Read& read, const std::string& name) {
        Family family = read_family(name, table_files(shelf_, table_name(name)), sources_);
        if (!family.has_rules)
            return family;
        if (!is_among(read.missing, name))
            read.missing.push_back(
                {name, fault_in_file(
                           family.files.front(), "needs the rules of its plugin, which is not there",
                           fmt::format("install {}.family again or name its folder with --plugins", name))});
        return std::nullopt;
    }

    const Shelf shelf_;
    const Bibliography sources_;
    const PluginSearch plugins_;
    const std::vector<std::string> on_shelf_;
    const bool has_own_ = false; ///< tables or plugins of the user
    std::mutex turn_;
    std::map<std::string, Plugin> loaded_;   ///< by file
    std::map<std::string, Family> families_; ///< by what brings them: a plugin's file, or a name
    std::map<std::string, Read> kept_; ///< by name; at most one for each that a file has, and one of all
};

Registry::Registry(std::vector<Family> families) : reader_(std::make_shared<Reader>(std::move(families))) {}
Registry::Registry(Shelf shelf, std::vector<std::string> plugin_folders, Bibliography sources)
    : reader_(std::make_shared<Reader>(std::move(shelf), std::move(plugin_folders), std::move(sources))) {}

bool Registry::has_own() const {
    return reader_->has_own();
}

const Family* Registry::family(const std::string& name) const {
    const Reader::Read read = reader_->read(name);
    const Family* found = named(read.ready, name);
    // A file named after one family may bring another.
    return found || is_among(read.missing, name) ? found : named(families(), name);
}

std::vector<MissingFamily> Registry::missing(const std::string& name) const {
    return reader_->read(name).missing;
}

Registry::Families Registry::families() const {
    return reader_->read(Reader::all).ready;
}

} // namespace ringfill
