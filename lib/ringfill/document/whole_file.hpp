#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ringfill {

/// The whole of a file, or of standard input for "-". At most `limit` bytes and one more are read, so that
/// the caller can tell that a file is too large. Throws Faulty (Origin::file) with the reason and the remedy.
std::string read_whole(const std::string& name, std::size_t limit);

/// Replaces a file by new content so that at every moment it is either the old one or the new one, whole: the
/// content is written beside it, brought to the disk and renamed over it. A link is followed; what is not a
/// regular file (a terminal, a pipe, /dev/null) is written to directly. Throws Faulty (Origin::file); then
/// the old file is untouched and nothing is left beside it.
void write_whole(const std::string& name, std::string_view content);

} // namespace ringfill
