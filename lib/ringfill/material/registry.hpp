#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/shelf.hpp>

namespace ringfill {

/// A family that does not stand ready, and why.
struct MissingFamily {
    std::string name; ///< as its file says it; the plugin may claim another
    Fault why;
};

/// The material families that stand ready, and those that do not.
struct Registry {
    std::vector<Family> families; ///< by name
    std::vector<MissingFamily> missing;
};

/// Loads the plugins in some folders and reads their tables, then the families that are tables only. A table
/// on the shelf adds to or corrects the one its plugin carries. A plugin that breaks a rule, two that claim
/// one family, and a table that is not whole without rules that did not load are told in `missing`; the
/// others keep working. Throws Faulty (Origin::table) for a broken table on the shelf.
Registry read_registry(const Shelf& shelf, const std::vector<std::string>& plugin_folders,
                       const Bibliography& sources);

/// The filler of a name family/name, or null after noting why not, with the nearest known name.
/// Throws Faulty (Origin::table) when its family does not stand ready.
const Filler* find_filler(const Registry& registry, const std::string& name, const std::string& path,
                          std::vector<Fault>& faults);

/// The base metal of a name family/grade, likewise.
const Base* find_base(const Registry& registry, const std::string& name, const std::string& path,
                      std::vector<Fault>& faults);

/// The family of a name family/grade that find_base has found.
const Family& family_of(const Registry& registry, const std::string& name);

} // namespace ringfill
