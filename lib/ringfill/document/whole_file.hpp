#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include <sys/types.h>

namespace ringfill {

/// A file descriptor that closes itself; the standard streams stay open.
class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor();

    int number() const { return number_; }
    /// Closes now and tells whether the system took everything.
    bool close_checked();

  private:
    int number_;
};

/// Writes everything to a descriptor, and again after a signal; the error number, or 0.
int write_all(int descriptor, std::string_view content);

/// The whole of a file, or of standard input for "-". At most `limit` bytes and one more are read, so that
/// the caller can tell that a file is too large. Throws Faulty (Origin::file) with the reason and the remedy.
std::string read_whole(const std::string& name, std::size_t limit);

/// An open descriptor of a file to read, that of standard input for "-"; throws likewise.
int open_to_read(const std::string& name);

/// Tells of a file that is open and yet cannot be read: throws Faulty (Origin::file) with the system's
/// reason.
[[noreturn]] void refuse_reading(const std::string& name, int error);

/// A file that is replaced by new content so that at every moment it is either the old one or the new one,
/// whole: the content is written to a new file beside it, piece by piece, and finish() brings it to the disk
/// and renames it over the old one. Without finish() the old file is untouched and nothing is left beside it:
/// the new file has no name until it is whole, so that a program that is ended leaves nothing; where a file
/// system has no such files it is named at once. A link is followed; what is not a regular file (a terminal,
/// a pipe, /dev/null) is written to directly.
/// Every member throws Faulty (Origin::file) with the reason and the remedy.
class WholeFile {
  public:
    explicit WholeFile(std::string name);
    ~WholeFile();
    void write(std::string_view content);
    void finish();

  private:
    int open();
    bool give_name();
    bool become_target();

    std::string name_;
    std::string target_;    ///< where the new file goes; empty: it is written to directly
    std::string temporary_; ///< the name of the new file, if it has one
    mode_t mode_ = 0;
    Descriptor file_; // stands behind what opening it sets
};

/// Replaces a file by new content in one go, as WholeFile does.
void write_whole(const std::string& name, std::string_view content);

} // namespace ringfill
