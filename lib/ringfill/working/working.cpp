#include <ringfill/working/working.hpp>

#include <iterator>

#include <ringfill/fault/place.hpp>

namespace ringfill {

void append(std::vector<Working>& all, std::vector<Working> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

std::vector<Working> under(const std::string& path, std::vector<Working> workings) {
    for (Working& one : workings)
        one.figure = member_path(path, one.figure);
    return workings;
}

} // namespace ringfill
