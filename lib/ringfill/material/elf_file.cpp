#include <ringfill/material/elf_file.hpp>

#include <cerrno>
#include <cstring>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>

namespace ringfill {
namespace {

[[noreturn]] void cannot_read(const std::string& path, int error) {
    throw Faulty(Origin::file,
                 fault_in_file(path, fmt::format("cannot be read: {}", std::strerror(error)),
                               error == ENOENT ? "check the name" : "choose a file that you may read"));
}

} // namespace

ElfFile::ElfFile(const std::string& path) : path_(path) {
    struct stat status = {};
    if (::stat(path.c_str(), &status) != 0) // before opening: a pipe would wait for its other end
        cannot_read(path, errno);
    if (S_ISDIR(status.st_mode))
        refuse("is a folder, not a plugin", "name a file in it, such as steel.family");
    if (!S_ISREG(status.st_mode))
        refuse("is not a regular file", "name a plugin, such as steel.family");
    descriptor_ = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (descriptor_ < 0)
        cannot_read(path, errno);
    size_ = static_cast<std::uint64_t>(status.st_size);
}

ElfFile::~ElfFile() {
    if (descriptor_ >= 0)
        ::close(descriptor_);
}

bool ElfFile::holds(std::uint64_t offset, std::uint64_t bytes) const {
    return offset <= size_ && bytes <= size_ - offset;
}

bool ElfFile::read(std::uint64_t offset, void* into, std::size_t bytes) const {
    if (!holds(offset, bytes))
        return false;
    auto* place = static_cast<char*>(into);
    while (bytes > 0) {
        const ssize_t got = ::pread(descriptor_, place, bytes, static_cast<off_t>(offset));
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0)
            return false;
        place += got;
        offset += static_cast<std::uint64_t>(got);
        bytes -= static_cast<std::size_t>(got);
    }
    return true;
}

void ElfFile::refuse(std::string reason, std::string remedy) const {
    throw Faulty(Origin::table, fault_in_file(path_, std::move(reason), std::move(remedy)));
}

} // namespace ringfill
