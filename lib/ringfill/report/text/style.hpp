#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// How a text report is dressed. Nothing is told by colour or weight alone.
struct Style {
    bool on_terminal = false;

    std::string strong(std::string_view text) const {
        return on_terminal ? "\033[1m" + std::string(text) + "\033[0m" : std::string(text);
    }
};

} // namespace ringfill
