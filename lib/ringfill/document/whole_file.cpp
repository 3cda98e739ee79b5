#include <ringfill/document/whole_file.hpp>

#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

enum class Doing { reading, writing };

std::string remedy_of(int error, Doing doing) {
    switch (error) {
    case ENOENT:
        return doing == Doing::reading ? "check the name" : "check the name and make the folder first";
    case EACCES:
    case EPERM:
    case EROFS:
        return doing == Doing::reading ? "choose a file that you may read"
                                       : "choose a place that you may use";
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return "make room or choose another disk";
    case EISDIR:
        return "name a file, not a folder";
    case ENOTDIR:
        return "a part of the name is a file, not a folder";
    default:
        return {};
    }
}

[[noreturn]] void fail(const std::string& name, Doing doing, int error) {
    const std::string_view what = doing == Doing::reading ? "cannot be read" : "cannot be written";
    throw Faulty(Origin::file, fault_in_file(name, fmt::format("{}: {}", what, std::strerror(error)),
                                             remedy_of(error, doing)));
}

/// The mode the target has, or the one a new file gets.
mode_t mode_of(const fs::path& target) {
    struct stat status = {};
    if (::stat(target.c_str(), &status) == 0)
        return status.st_mode & 07777U;
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666U & ~mask;
}

} // namespace

int open_to_read(const std::string& name) {
    const int descriptor = ::open(name.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        fail(name, Doing::reading, errno);
    return descriptor;
}

void refuse_reading(const std::string& name, int error) {
    fail(name, Doing::reading, error);
}

std::string read_whole(const std::string& name, std::size_t limit) {
    const bool standard_input = name == "-";
    const std::string shown = standard_input ? "standard input" : name;
    const Descriptor file(standard_input ? STDIN_FILENO : open_to_read(name));
    std::string content;
    std::array<char, 16'384> buffer; // not cleared: every byte used is read first
    while (content.size() <= limit) {
        const ssize_t got = ::read(file.number(), buffer.data(), buffer.size());
        if (got == 0)
            break;
        if (got < 0 && errno != EINTR)
            fail(shown, Doing::reading, errno);
        if (got > 0)
            content.append(buffer.data(), static_cast<std::size_t>(got));
    }
    return content;
}

WholeFile::WholeFile(std::string name) : name_(std::move(name)) {
    std::error_code ignored;
    const fs::file_status status = fs::status(name_, ignored);
    if (fs::is_directory(status))
        fail(name_, Doing::writing, EISDIR);
    if (fs::exists(status) && !fs::is_regular_file(status)) {
        direct_.emplace(::open(name_.c_str(), O_WRONLY | O_CLOEXEC));
        if (direct_->number() < 0)
            fail(name_, Doing::writing, errno);
        return;
    }
    // A link is followed even when what it points to is not there yet.
    const fs::path target = fs::is_symlink(fs::symlink_status(name_, ignored))
                                ? fs::weakly_canonical(name_, ignored)
                                : fs::path(name_);
    if (fs::exists(status) && ::access(target.c_str(), W_OK) != 0)
        fail(name_, Doing::writing, errno);
    mode_ = mode_of(target);
    beside_.emplace(target.string());
    if (!beside_->made())
        fail(name_, Doing::writing, errno);
}

void WholeFile::write(std::string_view content) {
    if (const int error = direct_ ? write_all(direct_->number(), content) : beside_->write(content))
        fail(name_, Doing::writing, error);
}

void WholeFile::finish() {
    if (const int error = direct_ ? 0 : beside_->become_target(mode_))
        fail(name_, Doing::writing, error);
}

void write_whole(const std::string& name, std::string_view content) {
    WholeFile file(name);
    file.write(content);
    file.finish();
}

} // namespace ringfill
