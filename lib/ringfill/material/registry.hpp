#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/shelf.hpp>

namespace ringfill {

// Data and pure rules only: the table is the host's to read, answer speaks through the sink, nothing is
// returned and no state kept. Families shipped here come through the same door. plugins/steel holds the
// formulas of ferritic steel, one a file; plugins/cast_iron chooses cold, warm or hot practice by the
// filler, never by a carbon equivalent; the others advise, and hardfacing is a table alone.
// ringfill_add_family(NAME TABLE FILE [SOURCES …] [VERSION …]) builds a family. has_rules in a table says
// that it is not whole without its plugin: then a missing plugin leaves the family out rather than answer
// too low. tests/consumer installs the package into the build folder and builds a family and the README's
// page of C++ against it. The program that is installed is linked a second time (ringfill_installed): it
// knows no folder of the build, where a stranger might lay a plugin.

/// A family that does not stand ready, and why.
struct MissingFamily {
    std::string name; ///< as its file says it; the plugin may claim another
    Fault why;
    bool may_be_any = false; ///< its plugin did not load, so which family it brings is not known
};

/// The material families of the shelf and the plugin folders. Each is read when it is first asked for, once,
/// and stays as long as the registry or a copy of it; a file that could not be read is tried again when it is
/// asked for again. Any number of threads may ask. With tables or plugins
/// of the user all are read at the first question: what of theirs is broken, claims a family twice or rules
/// on a pair of others is never passed over.
///
/// A table on the shelf adds to or corrects the one a plugin carries. A plugin that breaks a rule, two that
/// claim one family, and a table that is not whole without rules that did not load are missing; the others
/// keep working. A broken table on the shelf throws Faulty (Origin::table) where its family is asked for.
class Registry {
  public:
    explicit Registry(std::vector<Family> families = {});
    Registry(Shelf shelf, std::vector<std::string> plugin_folders, Bibliography sources);

    using Families = std::vector<std::reference_wrapper<const Family>>;

    /// Whether tables or plugins of the user stand beside the product's own.
    bool has_own() const;

    /// The family of a name, or null when none of that name stands ready. Reads its table and its plugin, and
    /// loads every plugin whose file is not named after a family of the shelf: it may claim this one.
    const Family* family(const std::string& name) const;

    /// All families that stand ready, by name. Reads everything.
    Families families() const;

    /// The families that are missing among those that may have this name; without a name all that are, which
    /// reads everything.
    std::vector<MissingFamily> missing(const std::string& name = {}) const;

  private:
    class Reader;
    std::shared_ptr<Reader> reader_;
};

/// The filler of a name family/name, or null after noting why not, with the nearest known name of all
/// families. Throws Faulty (Origin::table) when its family does not stand ready.
const Filler* find_filler(const Registry& registry, const std::string& name, const std::string& path,
                          std::vector<Fault>& faults);

/// The base metal of a name family/grade, likewise.
const Base* find_base(const Registry& registry, const std::string& name, const std::string& path,
                      std::vector<Fault>& faults);

/// The family of a name family/grade that find_base has found.
const Family& family_of(const Registry& registry, const std::string& name);

/// The families of the metals and fillers that a job names, each once, by name. What does not stand ready is
/// left out.
Registry::Families families_of(const Job& job, const Registry& registry);

/// The rule for a filler on a base metal: of the common ones, those of their two families and those of the
/// user's. Nothing: none knows the pair.
std::optional<Suit> suit_of(const Registry& registry, const std::vector<Suit>& common, const SuitName& filler,
                            const SuitName& base);

/// The fillers that a rule names for the buffer: one by its name, or those of a group, whatever their family;
/// the name of a group that no filler has stands as it is.
std::vector<std::string> buffer_fillers(const Suit& rule, const Registry& registry);

} // namespace ringfill
