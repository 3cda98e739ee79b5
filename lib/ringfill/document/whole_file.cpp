#include <ringfill/document/whole_file.hpp>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/fault.hpp>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

enum class Doing { reading, writing };

/// What to do about some errors of the system.
struct Remedy {
    std::array<int, 3> errors;
    const char* reading;
    const char* writing = reading;
};
constexpr Remedy remedies[] = {
    {{ENOENT}, "check the name", "check the name and make the folder first"},
    {{EACCES, EPERM, EROFS}, "choose a file that you may read", "choose a place that you may use"},
    {{ENOSPC, EDQUOT, EFBIG}, "make room or choose another disk"},
    {{EISDIR}, "name a file, not a folder"},
    {{ENOTDIR}, "a part of the name is a file, not a folder"},
};

[[noreturn]] void fail(const std::string& name, Doing doing, int error) {
    const bool reading = doing == Doing::reading;
    std::string remedy;
    for (const Remedy& one : remedies)
        if (ranges::contains(one.errors, error))
            remedy = reading ? one.reading : one.writing;
    throw Faulty(Origin::file, fault_in_file(name,
                                             fmt::format("cannot be {}: {}", reading ? "read" : "written",
                                                         std::strerror(error)),
                                             remedy));
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

} // namespace

Descriptor::~Descriptor() {
    if (number_ > STDERR_FILENO)
        ::close(number_);
}

bool Descriptor::close_checked() {
    return ::close(std::exchange(number_, -1)) == 0;
}

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

int open_to_read(const std::string& name) {
    const int descriptor = name == "-" ? STDIN_FILENO : ::open(name.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        fail(name, Doing::reading, errno);
    return descriptor;
}

void refuse_reading(const std::string& name, int error) {
    fail(name, Doing::reading, error);
}

std::string read_whole(const std::string& name, std::size_t limit) {
    const Descriptor file(open_to_read(name));
    std::string content;
    std::array<char, 16'384> buffer; // not cleared: every byte used is read first
    while (content.size() <= limit) {
        const ssize_t got = ::read(file.number(), buffer.data(), buffer.size());
        if (got == 0)
            break;
        if (got < 0 && errno != EINTR)
            fail(name == "-" ? "standard input" : name, Doing::reading, errno);
        if (got > 0)
            content.append(buffer.data(), static_cast<std::size_t>(got));
    }
    return content;
}

WholeFile::WholeFile(std::string name) : name_(std::move(name)), file_(open()) {
    if (file_.number() < 0)
        fail(name_, Doing::writing, errno);
}

WholeFile::~WholeFile() {
    if (!temporary_.empty())
        ::unlink(temporary_.c_str());
}

/// A new file beside the target, or what is no regular file itself; negative when there is none, and errno
/// says why.
int WholeFile::open() {
    std::error_code ignored;
    const fs::file_status status = fs::status(name_, ignored);
    if (fs::is_directory(status)) {
        errno = EISDIR;
        return -1;
    }
    if (fs::exists(status) && !fs::is_regular_file(status))
        return ::open(name_.c_str(), O_WRONLY | O_CLOEXEC);
    // A link is followed even when what it points to is not there yet.
    const bool is_link = fs::is_symlink(fs::symlink_status(name_, ignored));
    target_ = is_link ? fs::weakly_canonical(name_, ignored).string() : name_;
    if (fs::exists(status) && ::access(target_.c_str(), W_OK) != 0)
        return -1;
    mode_ = mode_of(target_);
    const fs::path folder = fs::path(target_).parent_path();
    if (::access("/proc/self/fd", X_OK) == 0) { // by which a file without a name can be given one
        const int nameless =
            ::open(folder.empty() ? "." : folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0600);
        if (nameless >= 0)
            return nameless;
    }
    std::string named = (folder / ".ringfill-XXXXXX.part").string();
    const int descriptor = ::mkstemps(named.data(), 5);
    if (descriptor >= 0)
        temporary_ = std::move(named);
    return descriptor;
}

void WholeFile::write(std::string_view content) {
    if (const int error = write_all(file_.number(), content))
        fail(name_, Doing::writing, error);
}

bool WholeFile::give_name() {
    const std::string by_descriptor = fmt::format("/proc/self/fd/{}", file_.number());
    for (int attempt = 0; attempt < 100; ++attempt) {
        const std::string name = fmt::format(".ringfill-{}-{}.part", ::getpid(), attempt);
        const std::string path = (fs::path(target_).parent_path() / name).string();
        if (::linkat(AT_FDCWD, by_descriptor.c_str(), AT_FDCWD, path.c_str(), AT_SYMLINK_FOLLOW) == 0) {
            temporary_ = path;
            return true;
        }
        if (errno != EEXIST)
            break;
    }
    return false;
}

bool WholeFile::become_target() {
    if (::fchmod(file_.number(), mode_) != 0 || ::fsync(file_.number()) != 0)
        return false;
    const EndsLater later;
    if ((temporary_.empty() && !give_name()) || !file_.close_checked() ||
        ::rename(temporary_.c_str(), target_.c_str()) != 0)
        return false;
    temporary_.clear();
    return true;
}

void WholeFile::finish() {
    if (!target_.empty() && !become_target())
        fail(name_, Doing::writing, errno);
}

void write_whole(const std::string& name, std::string_view content) {
    WholeFile file(name);
    file.write(content);
    file.finish();
}

} // namespace ringfill
