#include "workbook.hpp"

#include <cerrno>
#include <cstring>
#include <filesystem>

#include <dlfcn.h>
#include <sys/mman.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/fault/fault.hpp>
#include <ringfill/version.hpp>

#include "../table_folder.hpp"
#include "../workbook/workbook_part.hpp"

namespace ringfill::cli {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t largest_workbook = 64'000'000; // bytes

[[noreturn]] void fail(const std::string& where, const std::string& why) {
    throw Faulty(Origin::file, fault_in_file(where, fmt::format("cannot be written: {}", why),
                                             "make room there, or name another folder in TMPDIR"));
}

std::string temporary_folder() {
    std::error_code error;
    const fs::path folder = fs::temp_directory_path(error);
    if (error)
        fail("the system's temporary folder", error.message());
    return folder.string();
}

/// A file in memory: whenever the program ends, nothing of the prices is left behind.
class MemoryFile {
  public:
    MemoryFile() : number_(::memfd_create("quote.xlsx", MFD_CLOEXEC)) {
        if (number_ < 0)
            fail("a file in memory", std::strerror(errno));
    }
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    ~MemoryFile() { ::close(number_); }
    std::string name() const { return fmt::format("/proc/self/fd/{}", number_); }

  private:
    int number_;
};

[[noreturn]] void refuse_part(const std::string& part) {
    std::string why = ::dlerror();
    if (why.starts_with(part + ": "))
        why.erase(0, part.size() + 2);
    throw Faulty(Origin::file,
                 fault_in_file(part, fmt::format("cannot be loaded, and it writes workbooks: {}", why),
                               "install the program anew, or write a .csv with --csv"));
}

/// The function of the part that writes workbooks. It stays loaded until the program ends.
auto workbook_writer() {
    const std::string part = workbook_part();
    void* const loaded = ::dlopen(part.c_str(), RTLD_NOW | RTLD_LOCAL);
    void* const function = loaded ? ::dlsym(loaded, "ringfill_write_workbook") : nullptr;
    if (!function)
        refuse_part(part);
    return reinterpret_cast<decltype(&ringfill_write_workbook)>(function);
}

} // namespace

std::string workbook(const QuoteCells& cells) {
    const auto write = workbook_writer();
    const MemoryFile file;
    const std::string folder = temporary_folder(); // for what has no name there
    if (const char* const wrong = write(cells, file.name().c_str(), folder.c_str(), version))
        fail(folder, wrong);
    return read_whole(file.name(), largest_workbook);
}

} // namespace ringfill::cli
