#include <ringfill/document/descriptor.hpp>

#include <cerrno>
#include <cstddef>
#include <utility>

#include <unistd.h>

namespace ringfill {

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

} // namespace ringfill
