#pragma once

#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>

namespace ringfill {

/// The plugin files in some folders.
struct PluginSearch {
    std::vector<std::string> files; ///< canonical paths of NAME.family, by folder, then by name; each once
    std::vector<Fault> refused;     ///< folders that were not looked into, with the reason
};

/// Looks for files named *.family in each folder, not below it; hidden ones are skipped. A folder that
/// everyone may write is refused.
PluginSearch find_plugins(const std::vector<std::string>& folders);

/// Whether everyone on the machine may write to a file or into a folder. A folder like /tmp, where each may
/// change only files of his own, counts: anyone may still put one there.
bool everyone_may_write(const std::string& path);

} // namespace ringfill
