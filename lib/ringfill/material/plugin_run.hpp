#pragma once

#include <array>
#include <atomic>
#include <mutex>
#include <optional>
#include <string>
#include <utility>

#include <sys/types.h>

#include <ringfill/material/guard.hpp>

namespace ringfill {

/// The files that standard input, output and error lead to; nothing for one that is closed.
using StandardStreams = std::array<std::optional<std::pair<dev_t, ino_t>>, 3>;

StandardStreams standard_streams();

/// The plugin whose code ran last, for a process that watches this one: it lies in memory that both share.
struct PluginTrace {
    std::atomic<bool> inside = false;  ///< its code is running now
    std::atomic<unsigned> calls = 0;   ///< how often plugins were run; loading one counts
    std::array<char, 4'096> file = {}; ///< ended by a nul; empty before the first run
};

/// Notes each run of a plugin there from now on. It must outlive them all. Null, as at the start: nobody
/// watches.
void note_plugin_runs(PluginTrace* trace);

/// What code of a plugin has changed that it must leave alone.
struct LeftChanged {
    bool arithmetic = false;
    std::string stream = {}; ///< "standard output" and so on, the first of them; empty: none
};

/// One run of a plugin's code, a call or its loading. No two are at once in a process, as the interface
/// promises.
class PluginRun {
  public:
    explicit PluginRun(const std::string& file);
    PluginRun(const PluginRun&) = delete;
    PluginRun& operator=(const PluginRun&) = delete;
    ~PluginRun();

    /// Ends the run: puts arithmetic and standard streams back, and tells which were changed. A copy of the
    /// process that the plugin has made ends here: it would do the work of the program once more.
    LeftChanged end();

  private:
    std::lock_guard<std::mutex> turn_;
    ArithmeticGuard arithmetic_;
    StandardStreams before_;
    std::array<int, 3> kept_; ///< copies of their descriptors; negative: there is none
    pid_t process_;
};

} // namespace ringfill
