#pragma once

#include <string>
#include <vector>

namespace ringfill::testing {

/// A source file of the project, by its path from the project's root.
struct SourceFile {
    std::string path;
    std::vector<std::string> lines;
};

/// Every .cpp, .hpp and .h file under some folders of the project.
std::vector<SourceFile> sources_under(const std::vector<std::string>& folders);

} // namespace ringfill::testing
