#pragma once

#include <filesystem>
#include <string>

#include <ringfill/material/answer.hpp>

#include "document/refused.hpp"

namespace ringfill::testing {

/// The file of a plugin made for these tests, as messages name it.
inline std::string plugin_file(const std::string& name) {
    return std::filesystem::canonical(std::string(RINGFILL_BAD_PLUGINS) + "/" + name + ".family").string();
}

/// The bibliography the test plugins know.
inline const Bibliography& test_sources() {
    static const Bibliography sources = {
        {"practice", {"common practice, no source", "-", "-", "practice", "memory"}}};
    return sources;
}

/// A question on preheat that leaves nothing unknown.
inline Question preheat_question() {
    return {
        "preheat", "B1", "bad/F1", {{"wall_m", 0.02}, {"hydrogen_mL_per_100g", 5}, {"ambient_K", 283.15}}};
}

/// What a file is refused with when it is loaded, without its name; "accepted" when it loads.
inline std::string refused_loading(const std::string& file) {
    const std::string text = refusal(Origin::table, [&] { load_plugin(file); });
    return text.starts_with(file + ": ") ? text.substr(file.size() + 2) : text;
}

} // namespace ringfill::testing
