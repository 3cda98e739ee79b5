#include "terminal.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/fault/fault.hpp>

namespace ringfill::cli {

Style style_for(const std::string& output) {
    const char* terminal = std::getenv("TERM");
    const bool dresses = terminal && std::string_view(terminal) != "dumb" && !std::getenv("NO_COLOR");
    return {output.empty() && dresses && ::isatty(STDOUT_FILENO) == 1};
}

void deliver(std::string_view text, const std::string& output) {
    if (!output.empty())
        return write_whole(output, text);
    while (!text.empty()) {
        const ssize_t written = ::write(STDOUT_FILENO, text.data(), text.size());
        if (written >= 0) {
            text.remove_prefix(static_cast<std::size_t>(written));
            continue;
        }
        if (errno == EPIPE)
            return;
        if (errno != EINTR)
            throw Faulty(Origin::file,
                         fault_in_file("standard output",
                                       fmt::format("cannot be written: {}", std::strerror(errno)),
                                       "make room, or write elsewhere with -o FILE"));
    }
}

void complain(std::string_view text) {
    std::fwrite(text.data(), 1, text.size(), stderr);
}

} // namespace ringfill::cli
