#pragma once

#include <string>

namespace ringfill {

/// Whether everyone on the machine may write to a file or into a folder. A folder like /tmp, where each may
/// change only files of his own, counts: anyone may still put one there.
bool everyone_may_write(const std::string& path);

} // namespace ringfill
