#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/shelf.hpp>

namespace ringfill {

/// The material families that stand ready.
struct Registry {
    std::vector<Family> families;
};

/// Reads every family on the shelf. Throws Faulty (Origin::table).
Registry read_registry(const Shelf& shelf, const Bibliography& sources);

/// The filler of a name family/name, or null after noting why not, with the nearest known name.
const Filler* find_filler(const Registry& registry, const std::string& name, const std::string& path,
                          std::vector<Fault>& faults);

/// The base metal of a name family/grade, or null after noting why not, with the nearest known name.
const Base* find_base(const Registry& registry, const std::string& name, const std::string& path,
                      std::vector<Fault>& faults);

} // namespace ringfill
