#include <ringfill/material/plugin_file.hpp>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <map>
#include <mutex>
#include <string_view>
#include <utility>

#include <dlfcn.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/breach.hpp>
#include <ringfill/material/image.hpp>
#include <ringfill/material/plugin_run.hpp>
#include <ringfill/material/search.hpp>
#include <ringfill/table/shelf.hpp>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t first_plugin_size = 48; ///< of rf_material_plugin in version 1.0
constexpr std::size_t largest_plugin_size = 4'096;
constexpr std::size_t longest_name = 40; ///< of its family or version
static_assert(sizeof(rf_material_plugin) >= first_plugin_size);

constexpr std::string_view mend = "build the plugin again with that put right";

std::string canonical(const std::string& path) {
    if (path.empty())
        throw Faulty(Origin::file, fault_in_file({}, "no plugin is named", "write the name of its file"));
    std::error_code error;
    std::string found = fs::canonical(path, error).string();
    if (error)
        throw Faulty(Origin::file,
                     fault_in_file(path, fmt::format("cannot be read: {}", std::strerror(error.value())),
                                   "check the name"));
    return found;
}

/// Loading is running: what anyone could have put there is not loaded.
void refuse_if_open_to_all(const std::string& file) {
    refuse_if(everyone_may_write(file), "take that right away (chmod o-w) if you trust the file",
              "may be written to by everyone, so it is not loaded");
    refuse_if(everyone_may_write(fs::path(file).parent_path().string()), "move it to a folder of your own",
              "stands in a folder that everyone may write to, so it is not loaded");
}

/// What the loader says, without the file's name in front of it.
std::string loader_words(const std::string& file) {
    const char* words = ::dlerror();
    std::string said = words ? words : "no reason given";
    if (said.starts_with(file + ": "))
        said.erase(0, file.size() + 2);
    return printable(said);
}

/// What a library has changed when it was loaded. Its constructors run at the first loading only, so what was
/// seen then is kept with its handle, which stays good: nothing is ever closed.
LeftChanged changed_by_loading(void* library, LeftChanged now) {
    static std::mutex one_at_a_time;
    static std::map<void*, LeftChanged> seen;
    const std::lock_guard lock(one_at_a_time);
    return seen.try_emplace(library, std::move(now)).first->second;
}

void* load(const std::string& file) {
    PluginRun run(file);
    void* library = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    LeftChanged now = run.end();
    refuse_if(!library,
              "install what it needs, or build it again with -Wl,-z,defs, which names what is missing",
              "cannot be loaded: {}", library ? "" : loader_words(file));
    const LeftChanged left = changed_by_loading(library, std::move(now));
    refuse_if(left.arithmetic, "build it again without -ffast-math, -Ofast and -funsafe-math-optimizations",
              "changes the floating-point mode of the program when it is loaded");
    refuse_if(!left.stream.empty(), "build the plugin again without what does that",
              "closes or replaces {} when it is loaded", left.stream);
    return library;
}

/// The exported data of this version. Another version is named.
const void* exported(void* library) {
    const void* found = ::dlsym(library, RF_SYMBOL);
    for (int other = 0; !found && other <= 9; ++other)
        refuse_if(::dlsym(library, fmt::format("ringfill_material_v{}", other).c_str()) != nullptr,
                  "build it with this program's ringfill/material/abi.h",
                  "was built for version {} of the plugin interface; this program speaks 1", other);
    refuse_if(!found, "take it out of the folder, or export that symbol",
              "is a shared library, but no plugin: it does not export " RF_SYMBOL);
    return found;
}

/// The plugin's own struct, as much of it as both sides know.
rf_material_plugin copied(const void* data) {
    std::uint32_t size = 0;
    std::memcpy(&size, data, sizeof size);
    refuse_if(size < first_plugin_size || size > largest_plugin_size,
              "set size to sizeof(rf_material_plugin)",
              "gives the size of its struct as {} bytes; it must be {} to {}", size, first_plugin_size,
              largest_plugin_size);
    rf_material_plugin plugin = {};
    std::memcpy(&plugin, data, std::min<std::size_t>(size, sizeof plugin));
    return plugin;
}

/// A text that ends in a nul, at most a byte more than the longest it may be.
std::string_view bounded(const char* text) {
    return text ? std::string_view(text, ::strnlen(text, longest_name + 1)) : std::string_view();
}

void check_names(const rf_material_plugin& plugin) {
    const std::string_view family = bounded(plugin.family);
    refuse_if(family.empty(), mend, "has {} family name", plugin.family ? "an empty" : "no");
    refuse_if(
        !is_family_name(family), mend,
        "has the family name {}, which is not a lower-case letter and at most 39 more letters, digits and _",
        in_quotes(family));
    const std::string_view version = bounded(plugin.version);
    refuse_if(version.empty(), mend, "does not say its version");
    refuse_if(version.size() > longest_name, mend, "has a version of more than {} bytes", longest_name);
    refuse_if(!is_clean(version), mend, "has a version that is not clean UTF-8 text");
}

std::string table_of(const rf_material_plugin& plugin) {
    const auto& [data, size] = plugin.table;
    refuse_if(!data || size == 0, mend, "brings no table");
    refuse_if(size > RF_TABLE_LONGEST, mend, "brings a table of {} bytes; {} is the most", size,
              RF_TABLE_LONGEST);
    const std::string_view text(data, static_cast<std::size_t>(size));
    const auto byte = not_utf8_at(text);
    refuse_if(byte.has_value(), mend, "brings a table that is not UTF-8 at byte {}", byte.value_or(0));
    return std::string(text);
}

} // namespace

std::optional<std::size_t> not_utf8_at(std::string_view text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (static_cast<unsigned char>(text[i]) < 0x80)
            continue; // as nearly all of a table is
        const Character read = character_at(text, i);
        if (read.code == Character{}.code && read.bytes == 1)
            return i + 1;
        i += read.bytes - 1;
    }
    return std::nullopt;
}

bool is_clean(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const Character c = character_at(text, i);
        if (disturbs(c.code))
            return false;
        i += c.bytes;
    }
    return true;
}

Plugin load_plugin(const std::string& path) {
    const std::string file = canonical(path);
    check_image(file);
    return look_at(file, [&]() -> Plugin {
        refuse_if_open_to_all(file);
        const rf_material_plugin data = copied(exported(load(file)));
        check_names(data);
        return {file, data.family, data.version, table_of(data), data.answer};
    });
}

} // namespace ringfill
