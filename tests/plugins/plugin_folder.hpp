#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "cli/run_program.hpp"

namespace ringfill::testing {

/// A folder with one or more of the plugins made for these tests.
class PluginFolder {
  public:
    explicit PluginFolder(const std::vector<std::string>& names) {
        std::filesystem::create_directory(folder());
        for (const std::string& name : names)
            std::filesystem::copy_file(std::filesystem::path(RINGFILL_BAD_PLUGINS) / (name + ".family"),
                                       folder() / (name + ".family"));
    }

    const Workspace& workspace() const { return workspace_; }
    std::filesystem::path folder() const { return workspace_.folder() / "mine"; }
    std::string file(const std::string& name) const {
        return std::filesystem::canonical(folder() / (name + ".family")).string();
    }
    Outcome run(std::vector<std::string> words, const std::string& input = {}) const {
        words.insert(words.end(), {"--plugins", "mine"});
        return ringfill::testing::run(workspace_, {.words = std::move(words), .input = input});
    }

  private:
    Workspace workspace_;
};

/// A job of one bore in that metal.
inline std::string job_of(const std::string& base) {
    return R"({ "format": "ringfill-job/1", "title": "t", "units": "mm", "procedures": { "main": {
  "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min", "current": "180 A",
  "voltage": "19 V", "travel": "350 mm/min" } }, "bores": [{ "name": "pin", "base": ")" +
           base + R"(", "finish_diameter": "90 mm", "length": "100 mm", "boss_diameter": "180 mm",
  "worn": { "diameter": "93.4 mm" } }] })";
}

/// Words on one line, whatever the page was broken at.
inline std::string on_one_line(const std::string& text) {
    std::string line;
    for (const char c : text)
        if (c != '\n' && (c != ' ' || (!line.empty() && line.back() != ' ')))
            line += c;
        else if (c == '\n' && !line.empty() && line.back() != ' ')
            line += ' ';
    return line;
}

} // namespace ringfill::testing
