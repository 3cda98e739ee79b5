#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include <sys/types.h>

#include <ringfill/document/beside.hpp>
#include <ringfill/document/descriptor.hpp>

namespace ringfill {

/// The whole of a file, or of standard input for "-". At most `limit` bytes and one more are read, so that
/// the caller can tell that a file is too large. Throws Faulty (Origin::file) with the reason and the remedy.
std::string read_whole(const std::string& name, std::size_t limit);

/// An open descriptor of a file to read; throws likewise.
int open_to_read(const std::string& name);

/// Tells of a file that is open and yet cannot be read: throws Faulty (Origin::file) with the system's
/// reason.
[[noreturn]] void refuse_reading(const std::string& name, int error);

/// A file that is replaced by new content so that at every moment it is either the old one or the new one,
/// whole: the content is written beside it, piece by piece, and finish() brings it to the disk and renames it
/// over the old one. Without finish() the old file is untouched and nothing is left beside it. A link is
/// followed; what is not a regular file (a terminal, a pipe, /dev/null) is written to directly.
/// Every member throws Faulty (Origin::file) with the reason and the remedy.
class WholeFile {
  public:
    explicit WholeFile(std::string name);
    void write(std::string_view content);
    void finish();

  private:
    std::string name_;
    mode_t mode_ = 0;
    std::optional<Beside> beside_;
    std::optional<Descriptor> direct_;
};

/// Replaces a file by new content in one go, as WholeFile does.
void write_whole(const std::string& name, std::string_view content);

} // namespace ringfill
