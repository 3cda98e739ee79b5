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

bool deliver_more(std::string_view text) {
    const int error = write_all(STDOUT_FILENO, text);
    if (error != 0 && error != EPIPE)
        throw Faulty(Origin::file, fault_in_file("standard output",
                                                 fmt::format("cannot be written: {}", std::strerror(error)),
                                                 "make room, or write elsewhere with -o FILE"));
    return error == 0;
}

void deliver(std::string_view text, const std::string& output) {
    if (!output.empty())
        write_whole(output, text);
    else
        deliver_more(text);
}

void complain(std::string_view text) {
    (void)std::fwrite(text.data(), 1, text.size(), stderr); // what cannot be told here can be told nowhere
}

} // namespace ringfill::cli
