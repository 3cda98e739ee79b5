#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

namespace ringfill {

/// A file opened to look at its headers; nothing of it is mapped or run, and no offset it states is trusted.
class ElfFile {
  public:
    /// Throws Faulty: Origin::table for a folder or anything else that is no regular file, Origin::file when
    /// it cannot be read.
    explicit ElfFile(const std::string& path);
    ElfFile(const ElfFile&) = delete;
    ElfFile& operator=(const ElfFile&) = delete;
    ~ElfFile();

    const std::string& path() const { return path_; }
    std::uint64_t size() const { return size_; }

    /// Whether a part lies inside the file, whatever its offset and size claim.
    bool holds(std::uint64_t offset, std::uint64_t bytes) const;

    /// Reads a part; false when it does not lie inside the file.
    bool read(std::uint64_t offset, void* into, std::size_t bytes) const;

    /// Throws Faulty (Origin::table) of this file.
    [[noreturn]] void refuse(std::string reason, std::string remedy) const;

  private:
    std::string path_;
    int descriptor_ = -1;
    std::uint64_t size_ = 0;
};

} // namespace ringfill
