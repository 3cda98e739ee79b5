#include <ringfill/working/working.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {

std::vector<Working> under(const std::string& path, std::vector<Working> workings) {
    for (Working& one : workings)
        one.figure = member_path(path, one.figure);
    return workings;
}

} // namespace ringfill
