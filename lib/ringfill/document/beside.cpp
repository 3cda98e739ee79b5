#include <ringfill/document/beside.hpp>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

namespace ringfill {
namespace {

namespace fs = std::filesystem;

/// Whether a file without a name can be given one: it is found by its descriptor.
bool has_descriptors_by_name() {
    return ::access("/proc/self/fd", X_OK) == 0;
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

Beside::Beside(std::string target)
    : target_(std::move(target)), path_((fs::path(target_).parent_path() / ".ringfill-XXXXXX.part").string()),
      descriptor_(open()) {}

Beside::~Beside() {
    if (named_ && !renamed_)
        ::unlink(path_.c_str());
}

int Beside::write(std::string_view content) {
    return write_all(descriptor_.number(), content);
}

int Beside::become_target(mode_t mode) {
    if (::fchmod(descriptor_.number(), mode) != 0 || ::fsync(descriptor_.number()) != 0)
        return errno;
    const EndsLater later;
    if (!named_ && !give_name())
        return errno;
    if (!descriptor_.close_checked() || ::rename(path_.c_str(), target_.c_str()) != 0)
        return errno;
    renamed_ = true;
    return 0;
}

int Beside::open() {
    const fs::path folder =
        fs::path(target_).has_parent_path() ? fs::path(target_).parent_path() : fs::path(".");
    if (has_descriptors_by_name()) {
        const int nameless = ::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0600);
        if (nameless >= 0)
            return nameless;
    }
    const int named = ::mkstemps(path_.data(), 5);
    named_ = named >= 0;
    return named;
}

bool Beside::give_name() {
    const std::string by_descriptor = fmt::format("/proc/self/fd/{}", descriptor_.number());
    for (int attempt = 0; attempt < 100 && !named_; ++attempt) {
        const std::string name = fmt::format(".ringfill-{}-{}.part", ::getpid(), attempt);
        path_ = (fs::path(path_).parent_path() / name).string();
        named_ = ::linkat(AT_FDCWD, by_descriptor.c_str(), AT_FDCWD, path_.c_str(), AT_SYMLINK_FOLLOW) == 0;
        if (!named_ && errno != EEXIST)
            return false;
    }
    return named_;
}

} // namespace ringfill
