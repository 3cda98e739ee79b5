#include <ringfill/material/plugin_run.hpp>

#include <algorithm>
#include <cstdlib>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace ringfill {
namespace {

constexpr std::array stream_names = {"standard input", "standard output", "standard error"};

std::mutex turn_of_plugins;
std::atomic<PluginTrace*> plugin_trace = nullptr;

std::optional<std::pair<dev_t, ino_t>> file_of(int descriptor) {
    struct stat status = {};
    if (::fstat(descriptor, &status) != 0)
        return std::nullopt;
    return std::pair(status.st_dev, status.st_ino);
}

void note_begin(const std::string& file) {
    PluginTrace* const trace = plugin_trace;
    if (!trace)
        return;
    const std::size_t size = std::min(file.size(), trace->file.size() - 1);
    std::copy_n(file.begin(), size, trace->file.begin());
    trace->file[size] = '\0';
    trace->calls += 1;
    trace->inside = true;
}

void note_end() {
    if (PluginTrace* const trace = plugin_trace)
        trace->inside = false;
}

} // namespace

StandardStreams standard_streams() {
    return {file_of(STDIN_FILENO), file_of(STDOUT_FILENO), file_of(STDERR_FILENO)};
}

void note_plugin_runs(PluginTrace* trace) {
    plugin_trace = trace;
}

PluginRun::PluginRun(const std::string& file)
    : turn_(turn_of_plugins), before_(standard_streams()), process_(::getpid()) {
    constexpr int beside_them = 3;
    for (std::size_t i = 0; i < kept_.size(); ++i)
        kept_[i] = before_[i] ? ::fcntl(static_cast<int>(i), F_DUPFD_CLOEXEC, beside_them) : -1;
    note_begin(file);
}

PluginRun::~PluginRun() {
    for (const int descriptor : kept_)
        if (descriptor >= 0)
            ::close(descriptor);
}

LeftChanged PluginRun::end() {
    if (::getpid() != process_)
        ::_exit(EXIT_FAILURE);
    LeftChanged left{arithmetic_.put_back()};
    const StandardStreams after = standard_streams();
    for (std::size_t i = 0; i < after.size(); ++i) {
        if (after[i] == before_[i])
            continue;
        if (left.stream.empty())
            left.stream = stream_names[i];
        if (before_[i] && file_of(kept_[i]) == before_[i])
            ::dup2(kept_[i], static_cast<int>(i));
    }
    note_end();
    return left;
}

} // namespace ringfill
