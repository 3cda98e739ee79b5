#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <sys/types.h>

namespace ringfill::testing {

/// A folder of its own under the system's temporary folder, gone again at the end.
class Workspace {
  public:
    Workspace();
    Workspace(const Workspace&) = delete;
    Workspace& operator=(const Workspace&) = delete;
    ~Workspace();

    const std::filesystem::path& folder() const { return folder_; }
    std::string path(const std::string& name) const { return (folder_ / name).string(); }
    void write(const std::string& name, const std::string& content) const;
    std::string read(const std::string& name) const;
    /// The names of everything in the folder, sorted.
    std::vector<std::string> names() const;

  private:
    std::filesystem::path folder_;
};

/// The content of any file; fails the test when it cannot be read.
std::string content_of(const std::string& path);

/// The line, from 1, in which something stands first in a text.
std::size_t line_of(const std::string& text, const std::string& wanted);

/// One run of the program.
struct Call {
    std::vector<std::string> words = {}; ///< after the program's name
    std::string input = {};              ///< standard input, at most 60,000 bytes
    std::vector<std::pair<std::string, std::string>> environment = {}; ///< set beside what the tests have
    std::string program = RINGFILL_PROGRAM;
    bool without_privileges = false;         ///< as a user whom permissions bind
    std::optional<long> file_limit = {};     ///< no file may grow past so many bytes
    std::optional<int> standard_output = {}; ///< a descriptor instead of the one that is read back
};

struct Outcome {
    int status = -1; ///< 1000 and the signal's number when a signal ended it
    std::string out;
    std::string err;
};

/// Starts the program in a folder and returns its process; the descriptors are its standard streams.
pid_t start_program(const std::filesystem::path& folder, const Call& call, int input, int output, int errors);

/// Runs the program in a folder, its streams apart.
Outcome run(const std::filesystem::path& folder, const Call& call);
inline Outcome run(const Workspace& workspace, const Call& call) {
    return run(workspace.folder(), call);
}

/// Runs the program on a pseudo-terminal of 80 columns; everything it prints comes back as out.
Outcome run_on_terminal(const Workspace& workspace, const Call& call);

} // namespace ringfill::testing
