#include <ringfill/document/whole_file.hpp>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <filesystem>
#include <optional>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

/// A file descriptor that closes itself.
class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (number_ > STDERR_FILENO)
            ::close(number_);
    }
    int number() const { return number_; }
    /// Closes now and tells whether the system took everything.
    bool close_checked() { return ::close(std::exchange(number_, -1)) == 0; }

  private:
    int number_;
};

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

/// Writes everything; the error number, or 0.
int write_all(int descriptor, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(descriptor, content.data(), content.size());
        if (written < 0 && errno != EINTR)
            return errno;
        if (written > 0)
            content.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

/// Keeps what asks the program to end waiting until the end of a block.
class EndsLater {
  public:
    EndsLater() {
        sigset_t ends;
        ::sigemptyset(&ends);
        for (const int signal : {SIGINT, SIGTERM, SIGHUP})
            ::sigaddset(&ends, signal);
        ::pthread_sigmask(SIG_BLOCK, &ends, &before_);
    }
    EndsLater(const EndsLater&) = delete;
    EndsLater& operator=(const EndsLater&) = delete;
    ~EndsLater() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

  private:
    sigset_t before_ = {};
};

/// A new file beside the target, removed again unless it was renamed. It has no name until it is whole, so
/// that a program that is ended leaves nothing; where a file system has no such files it is named at once.
class Beside {
  public:
    explicit Beside(const fs::path& target)
        : path_((target.parent_path() / ".ringfill-XXXXXX.part").string()), descriptor_(open(target)) {}
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;
    ~Beside() {
        if (named_ && !renamed_)
            ::unlink(path_.c_str());
    }
    bool made() const { return descriptor_.number() >= 0; }

    /// The error number of the step that failed, or 0.
    int become(const fs::path& target, std::string_view content, mode_t mode) {
        if (const int error = write_all(descriptor_.number(), content))
            return error;
        if (::fchmod(descriptor_.number(), mode) != 0 || ::fsync(descriptor_.number()) != 0)
            return errno;
        const EndsLater later;
        if (!named_ && !give_name())
            return errno;
        if (!descriptor_.close_checked() || ::rename(path_.c_str(), target.c_str()) != 0)
            return errno;
        renamed_ = true;
        return 0;
    }

  private:
    int open(const fs::path& target) {
        const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
        if (has_descriptors_by_name()) {
            const int nameless = ::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0600);
            if (nameless >= 0)
                return nameless;
        }
        const int named = ::mkstemps(path_.data(), 5);
        named_ = named >= 0;
        return named;
    }

    /// Whether a file without a name can be given one: it is found by its descriptor.
    static bool has_descriptors_by_name() { return ::access("/proc/self/fd", X_OK) == 0; }

    bool give_name() {
        const std::string by_descriptor = fmt::format("/proc/self/fd/{}", descriptor_.number());
        for (int attempt = 0; attempt < 100 && !named_; ++attempt) {
            const std::string name = fmt::format(".ringfill-{}-{}.part", ::getpid(), attempt);
            path_ = (fs::path(path_).parent_path() / name).string();
            named_ =
                ::linkat(AT_FDCWD, by_descriptor.c_str(), AT_FDCWD, path_.c_str(), AT_SYMLINK_FOLLOW) == 0;
            if (!named_ && errno != EEXIST)
                return false;
        }
        return named_;
    }

    std::string path_;
    bool named_ = false; // stands before what sets it
    Descriptor descriptor_;
    bool renamed_ = false;
};

/// The mode the target has, or the one a new file gets.
mode_t mode_of(const fs::path& target) {
    struct stat status = {};
    if (::stat(target.c_str(), &status) == 0)
        return status.st_mode & 07777U;
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666U & ~mask;
}

void write_directly(const std::string& name, std::string_view content) {
    const Descriptor file(::open(name.c_str(), O_WRONLY | O_CLOEXEC));
    if (file.number() < 0)
        fail(name, Doing::writing, errno);
    if (const int error = write_all(file.number(), content))
        fail(name, Doing::writing, error);
}

} // namespace

std::string read_whole(const std::string& name, std::size_t limit) {
    const bool standard_input = name == "-";
    const std::string shown = standard_input ? "standard input" : name;
    const Descriptor file(standard_input ? STDIN_FILENO : ::open(name.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.number() < 0)
        fail(shown, Doing::reading, errno);
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

void write_whole(const std::string& name, std::string_view content) {
    std::error_code ignored;
    const fs::file_status status = fs::status(name, ignored);
    if (fs::is_directory(status))
        fail(name, Doing::writing, EISDIR);
    if (fs::exists(status) && !fs::is_regular_file(status))
        return write_directly(name, content);
    // A link is followed even when what it points to is not there yet.
    const fs::path target = fs::is_symlink(fs::symlink_status(name, ignored))
                                ? fs::weakly_canonical(name, ignored)
                                : fs::path(name);
    if (fs::exists(status) && ::access(target.c_str(), W_OK) != 0)
        fail(name, Doing::writing, errno);
    const mode_t mode = mode_of(target);
    Beside beside(target);
    if (!beside.made())
        fail(name, Doing::writing, errno);
    if (const int error = beside.become(target, content, mode))
        fail(name, Doing::writing, error);
}

} // namespace ringfill
