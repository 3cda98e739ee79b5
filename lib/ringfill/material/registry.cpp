#include <ringfill/material/registry.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <mutex>
#include <optional>
#include <variant>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
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

/// Which of two plugins of one family is right nobody can tell, so neither is taken.
std::vector<const Plugin*> without_twins(const std::vector<const Plugin*>& plugins,
                                         std::vector<MissingFamily>& missing) {
    std::vector<const Plugin*> alone;
    for (const Plugin* plugin : plugins) {
        const auto twin = std::find_if(plugins.begin(), plugins.end(), [&](const Plugin* other) {
            return other->family == plugin->family && other->file != plugin->file;
        });
        if (twin == plugins.end())
            alone.push_back(plugin);
        else
            missing.push_back(
                {plugin->family, fault_in_file(plugin->file,
                                               fmt::format("is a plugin of the family {}, and so is {}",
                                                           plugin->family, printable((*twin)->file)),
                                               "keep one of the two")});
    }
    return alone;
}

bool is_among(const std::vector<MissingFamily>& missing, const std::string& name) {
    return std::any_of(missing.begin(), missing.end(),
                       [&](const MissingFamily& one) { return one.name == name; });
}

} // namespace

/// Reads under a lock: what is asked for twice is read once, and a plugin is loaded once.
class Registry::Reader {
  public:
    /// What was read: of one name, or all.
    struct Read {
        std::vector<std::reference_wrapper<const Family>> ready; ///< by name
        std::vector<MissingFamily> missing;
    };

    Reader(Shelf shelf, std::vector<std::string> folders, Bibliography sources)
        : shelf_(std::move(shelf)), sources_(std::move(sources)), plugins_(find_plugins(folders)),
          on_shelf_(family_names(shelf_)), has_own_(shelf_.folders.size() > 1 || folders.size() > 1) {}

    explicit Reader(std::vector<Family> families) {
        for (Family& family : families) {
            const std::string name = family.name;
            const Family& kept = families_.emplace(name, std::move(family)).first->second;
            attempts_[name].read.ready.push_back(kept);
        }
        for (const auto& [name, family] : families_)
            attempts_[all].read.ready.push_back(family);
    }

    /// Of one name, or of all. Throws what reading threw, each time.
    const Read& read(const std::string& name) {
        const std::lock_guard turn(turn_);
        if (has_own_ && name != all)
            (void)kept(all);
        return kept(name);
    }

    static constexpr const char* all = "";
    bool has_own() const { return has_own_; }

  private:
    struct Attempt {
        Read read;
        std::optional<Faulty> broken; ///< a table on the shelf
    };

    const Read& kept(const std::string& name) {
        auto found = attempts_.find(name);
        if (found == attempts_.end()) {
            Attempt attempt = attempted(name);
            if (!attempt.broken && attempt.read.ready.empty() && attempt.read.missing.empty() && name != all)
                return nothing_; // not kept: there is no end of names that nobody has
            found = attempts_.emplace(name, std::move(attempt)).first;
        }
        if (found->second.broken)
            throw Faulty(*found->second.broken);
        return found->second.read;
    }

    Attempt attempted(const std::string& only) {
        Attempt attempt;
        try {
            read_into(attempt.read, only);
        } catch (const Faulty& faulty) {
            attempt.broken = faulty;
        }
        return attempt;
    }

    void read_into(Read& read, const std::string& only) {
        const auto wanted = [&](const std::string& name) { return only == all || name == only; };
        if (only == all)
            for (const Fault& fault : plugins_.refused)
                read.missing.push_back({"", fault});
        std::vector<const Plugin*> plugins;
        for (const std::string& file : plugins_.files)
            if (const std::string stem = stem_of(file); has_own_ || wanted(stem) || !stands_on_shelf(stem))
                if (const Plugin* plugin = loaded(file, read))
                    plugins.push_back(plugin);
        for (const Plugin* plugin : without_twins(plugins, read.missing))
            if (wanted(plugin->family))
                add_plugin_family(read, *plugin);
        for (const std::string& name : on_shelf_)
            if (wanted(name) && std::none_of(read.ready.begin(), read.ready.end(),
                                             [&](const Family& family) { return family.name == name; }))
                add_table_family(read, name);
        std::sort(read.ready.begin(), read.ready.end(),
                  [](const Family& one, const Family& other) { return one.name < other.name; });
    }

    bool stands_on_shelf(const std::string& name) const {
        return std::find(on_shelf_.begin(), on_shelf_.end(), name) != on_shelf_.end();
    }

    const Plugin* loaded(const std::string& file, Read& read) {
        auto found = loaded_.find(file);
        if (found == loaded_.end())
            try {
                found = loaded_.emplace(file, load_plugin(file)).first;
            } catch (const Faulty& faulty) {
                found = loaded_.emplace(file, faulty.faults().front()).first;
            }
        if (const Fault* why = std::get_if<Fault>(&found->second))
            read.missing.push_back({stem_of(file), *why});
        return std::get_if<Plugin>(&found->second);
    }

    void add_plugin_family(Read& read, const Plugin& plugin) {
        if (add_if_kept(read, plugin.file))
            return;
        const auto carried = [&] { return parse(plugin.file + " (its table)", plugin.table, Origin::table); };
        std::optional<Family> family;
        try {
            family = read_family(plugin.family, {carried()}, sources_);
        } catch (const Faulty& faulty) {
            read.missing.push_back({plugin.family, faulty.faults().front()});
            return;
        }
        std::vector<Document> more;
        for (TableText& table : table_texts(shelf_, table_name(plugin.family)))
            if (table.text != plugin.table) // the very table that the plugin was built with adds nothing
                more.push_back(parse(table.file, std::move(table.text), Origin::table));
        if (!more.empty()) {
            more.insert(more.begin(), carried());
            family = read_family(plugin.family, std::move(more), sources_);
        }
        family->plugin = plugin;
        read.ready.push_back(families_.emplace(plugin.file, std::move(*family)).first->second);
    }

    void add_table_family(Read& read, const std::string& name) {
        if (add_if_kept(read, name))
            return;
        Family family = read_family(name, table_files(shelf_, table_name(name)), sources_);
        if (!family.has_rules)
            read.ready.push_back(families_.emplace(name, std::move(family)).first->second);
        else if (!is_among(read.missing, name))
            read.missing.push_back(
                {name, fault_in_file(
                           family.files.front(), "needs the rules of its plugin, which is not there",
                           fmt::format("install {}.family again or name its folder with --plugins", name))});
    }

    bool add_if_kept(Read& read, const std::string& brought_by) {
        const auto kept = families_.find(brought_by);
        if (kept != families_.end())
            read.ready.push_back(kept->second);
        return kept != families_.end();
    }

    const Shelf shelf_;
    const Bibliography sources_;
    const PluginSearch plugins_;
    const std::vector<std::string> on_shelf_;
    const bool has_own_ = false; ///< tables or plugins of the user
    const Read nothing_;
    std::mutex turn_;
    std::map<std::string, std::variant<Plugin, Fault>> loaded_; ///< by file
    std::map<std::string, Family> families_;  ///< by what brings them: a plugin's file, or a name
    std::map<std::string, Attempt> attempts_; ///< by name
};

Registry::Registry() : Registry(std::vector<Family>()) {}
Registry::Registry(std::vector<Family> families) : reader_(std::make_shared<Reader>(std::move(families))) {}
Registry::Registry(Shelf shelf, std::vector<std::string> plugin_folders, Bibliography sources)
    : reader_(std::make_shared<Reader>(std::move(shelf), std::move(plugin_folders), std::move(sources))) {}

bool Registry::has_own() const {
    return reader_->has_own();
}

const Family* Registry::family(const std::string& name) const {
    if (!is_family_name(name))
        return nullptr;
    const Reader::Read& named = reader_->read(name);
    if (!named.ready.empty())
        return &named.ready.front().get();
    if (!is_among(named.missing, name))
        for (const Family& family : families()) // a file named after one family may bring another
            if (family.name == name)
                return &family;
    return nullptr;
}

const std::vector<MissingFamily>& Registry::missing(const std::string& name) const {
    return reader_->read(is_family_name(name) ? name : Reader::all).missing;
}

const std::vector<std::reference_wrapper<const Family>>& Registry::families() const {
    return reader_->read(Reader::all).ready;
}

const std::vector<MissingFamily>& Registry::missing() const {
    return reader_->read(Reader::all).missing;
}

} // namespace ringfill
