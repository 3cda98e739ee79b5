#include "end_request.hpp"

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdint>
#include <system_error>

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

namespace ringfill::cli {
namespace {

constexpr std::array end_signals = {SIGINT, SIGTERM, SIGHUP};

// All that a signal handler may touch.
std::atomic<int> asked_by = 0;
std::atomic<int> bell = -1;

void ring(int signal) {
    const int kept = errno;
    asked_by = signal;
    const std::uint64_t once = 1;
    if (::write(bell, &once, sizeof once) < 0) {
        // it rings already
    }
    errno = kept;
}

[[noreturn]] void fail() {
    throw std::system_error(errno, std::generic_category());
}

} // namespace

EndRequest::EndRequest() : bell_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {
    if (bell_.number() < 0)
        fail();
    asked_by = 0;
    bell = bell_.number();
    struct sigaction action = {};
    action.sa_handler = ring;
    action.sa_flags = SA_RESTART | static_cast<int>(SA_RESETHAND); // the second one does what it always does
    for (const int signal : end_signals) {
        struct sigaction before = {};
        ::sigaction(signal, nullptr, &before);
        if (before.sa_handler != SIG_IGN) // nohup stays nohup
            ::sigaction(signal, &action, nullptr);
    }
}

EndRequest::~EndRequest() {
    for (const int signal : end_signals) {
        struct sigaction now = {};
        ::sigaction(signal, nullptr, &now);
        if (now.sa_handler == ring)
            (void)std::signal(signal, SIG_DFL);
    }
    bell = -1;
}

std::size_t EndRequest::read(int descriptor, char* into, std::size_t most) const {
    while (signal() == 0) {
        std::array<pollfd, 2> open = {pollfd{descriptor, POLLIN, 0}, pollfd{bell_.number(), POLLIN, 0}};
        if (::poll(open.data(), open.size(), -1) < 0 && errno != EINTR)
            fail();
        if (open[0].revents == 0 || signal() != 0)
            continue;
        const ssize_t got = ::read(descriptor, into, most);
        if (got >= 0)
            return static_cast<std::size_t>(got);
        if (errno != EINTR && errno != EAGAIN)
            fail();
    }
    return 0;
}

int EndRequest::signal() const {
    return asked_by;
}

} // namespace ringfill::cli
