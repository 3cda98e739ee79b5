#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include <sys/mman.h>
#include <unistd.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/material/image.hpp>

using namespace ringfill;

/// Whatever bytes a plugin's file holds, it is judged from its headers: a whole library for this machine, or
/// refused as Faulty with one reason. Nothing of it is loaded or run.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const int file = ::memfd_create("image", 0);
    static const std::string path = "/proc/self/fd/" + std::to_string(file);
    if (::ftruncate(file, 0) != 0 || ::pwrite(file, data, size, 0) != static_cast<ssize_t>(size))
        std::abort();
    try {
        check_image(path);
    } catch (const Faulty& faulty) {
        if (faulty.faults().size() != 1 || faulty.faults().front().reason.empty())
            std::abort();
    }
    return 0;
}
