#include <ringfill/material/open_to_all.hpp>

#include <sys/stat.h>

namespace ringfill {

bool everyone_may_write(const std::string& path) {
    struct stat status = {};
    return ::stat(path.c_str(), &status) == 0 && (status.st_mode & S_IWOTH) != 0;
}

} // namespace ringfill
