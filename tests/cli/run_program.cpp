#include "run_program.hpp"

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include <fcntl.h>
#include <grp.h>
#include <pty.h>
#include <sys/mman.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace ringfill::testing {
namespace {

namespace fs = std::filesystem;

constexpr int nobody = 65534;
constexpr int could_not_start = 126;

void needs(bool worked, const char* what) {
    if (!worked)
        throw std::runtime_error(what);
}

/// A nameless file in memory.
int nameless_file() {
    const int descriptor = ::memfd_create("ringfill-test", MFD_CLOEXEC);
    needs(descriptor >= 0, "memfd_create");
    return descriptor;
}

std::string take_content(int descriptor) {
    std::string content;
    std::array<char, 65536> buffer{};
    ::lseek(descriptor, 0, SEEK_SET);
    while (true) {
        const ssize_t got = ::read(descriptor, buffer.data(), buffer.size());
        if (got <= 0)
            break;
        content.append(buffer.data(), static_cast<std::size_t>(got));
    }
    ::close(descriptor);
    return content;
}

/// The end of a pipe from which the text can be read.
int pipe_with(const std::string& text) {
    needs(text.size() <= 60'000, "the input is too large for one pipe");
    std::array<int, 2> ends{};
    needs(::pipe2(ends.data(), O_CLOEXEC) == 0, "pipe");
    needs(::write(ends[1], text.data(), text.size()) == static_cast<ssize_t>(text.size()), "write to a pipe");
    ::close(ends[1]);
    return ends[0];
}

/// In the child: becomes the program.
[[noreturn]] void become_program(const fs::path& folder, const Call& call) {
    std::vector<std::string> words{call.program};
    words.insert(words.end(), call.words.begin(), call.words.end());
    std::vector<char*> arguments;
    for (std::string& word : words)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    for (const auto& [name, value] : call.environment)
        ::setenv(name.c_str(), value.c_str(), 1);
    std::signal(SIGPIPE, SIG_DFL);
    bool ready = ::chdir(folder.c_str()) == 0;
    if (call.file_limit) {
        std::signal(SIGXFSZ, SIG_IGN); // writing fails with EFBIG instead
        const rlimit limit{static_cast<rlim_t>(*call.file_limit), static_cast<rlim_t>(*call.file_limit)};
        ready = ready && ::setrlimit(RLIMIT_FSIZE, &limit) == 0;
    }
    if (call.without_privileges && ::geteuid() == 0)
        ready = ready && ::setgroups(0, nullptr) == 0 && ::setgid(nobody) == 0 && ::setuid(nobody) == 0;
    if (ready)
        ::execv(call.program.c_str(), arguments.data());
    ::_exit(could_not_start);
}

int status_of(pid_t process) {
    int status = 0;
    needs(::waitpid(process, &status, 0) == process, "waitpid");
    if (WIFSIGNALED(status))
        return 1000 + WTERMSIG(status);
    needs(WEXITSTATUS(status) != could_not_start, "the program could not be started");
    return WEXITSTATUS(status);
}

} // namespace

Workspace::Workspace() {
    std::string name = (fs::temp_directory_path() / "ringfill-test-XXXXXX").string();
    needs(::mkdtemp(name.data()) != nullptr, "mkdtemp");
    needs(::chmod(name.c_str(), 0755) == 0, "chmod");
    folder_ = name;
}

Workspace::~Workspace() {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
}

void Workspace::write(const std::string& name, const std::string& content) const {
    fs::create_directories((folder_ / name).parent_path());
    std::ofstream file(folder_ / name, std::ios::binary);
    file << content;
    file.close();
    needs(file.good(), "write a test's file");
}

std::string Workspace::read(const std::string& name) const {
    return content_of(path(name));
}

std::vector<std::string> Workspace::names() const {
    std::vector<std::string> names;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder_))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

std::string content_of(const std::string& path) {
    const std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error("cannot read " + path);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

std::size_t line_of(const std::string& text, const std::string& wanted) {
    const std::size_t place = text.find(wanted);
    needs(place != std::string::npos, "the wanted text is not there");
    return 1 + static_cast<std::size_t>(
                   std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(place), '\n'));
}

pid_t start_program(const fs::path& folder, const Call& call, int input, int output, int errors) {
    const pid_t process = ::fork();
    needs(process >= 0, "fork");
    if (process == 0) {
        ::dup2(input, STDIN_FILENO);
        ::dup2(output, STDOUT_FILENO);
        ::dup2(errors, STDERR_FILENO);
        become_program(folder, call);
    }
    return process;
}

Outcome run(const fs::path& folder, const Call& call) {
    const int input = pipe_with(call.input);
    const int output = nameless_file();
    const int errors = nameless_file();
    const pid_t process = start_program(folder, call, input, call.standard_output.value_or(output), errors);
    ::close(input);
    Outcome outcome;
    outcome.status = status_of(process);
    outcome.out = take_content(output);
    outcome.err = take_content(errors);
    return outcome;
}

Outcome run_on_terminal(const Workspace& workspace, const Call& call) {
    int master = -1;
    winsize size{};
    size.ws_row = 24;
    size.ws_col = 80;
    const pid_t process = ::forkpty(&master, nullptr, nullptr, &size);
    needs(process >= 0, "forkpty");
    if (process == 0)
        become_program(workspace.folder(), call);
    Outcome outcome;
    std::array<char, 4096> buffer{};
    while (true) {
        const ssize_t got =
            ::read(master, buffer.data(), buffer.size()); // EIO when the other side has closed
        if (got <= 0)
            break;
        outcome.out.append(buffer.data(), static_cast<std::size_t>(got));
    }
    ::close(master);
    outcome.status = status_of(process);
    return outcome;
}

} // namespace ringfill::testing
