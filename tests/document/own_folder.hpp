#pragma once

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace ringfill::testing {

/// A new empty folder of a test's own, removed with all it holds when the test ends.
class OwnFolder {
  public:
    OwnFolder() : path_((std::filesystem::temp_directory_path() / "ringfill.XXXXXX").string()) {
        REQUIRE(::mkdtemp(path_.data()));
    }
    OwnFolder(const OwnFolder&) = delete;
    OwnFolder& operator=(const OwnFolder&) = delete;
    ~OwnFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }

    const std::string& path() const { return path_; }
    std::string operator/(const std::string& name) const { return path_ + '/' + name; }

    void put(const std::string& name, const std::string& content) const {
        std::filesystem::create_directories(std::filesystem::path(*this / name).parent_path());
        std::ofstream(*this / name, std::ios::binary) << content;
    }

    /// The names of all that is in it, sorted, with blanks between.
    std::string names() const {
        std::vector<std::string> found;
        for (const auto& file : std::filesystem::recursive_directory_iterator(path_))
            found.push_back(file.path().lexically_relative(path_).string());
        std::sort(found.begin(), found.end());
        std::string all;
        for (const std::string& name : found)
            all += (all.empty() ? "" : " ") + name;
        return all;
    }

  private:
    std::string path_;
};

} // namespace ringfill::testing
