#include <ringfill/job/possible_bore.hpp>

#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <range/v3/numeric/accumulate.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

/// What stands on a limit may differ from it in its last digit [m].
const Length last_digit = in_si<Length>(1e-9);

std::string both(Length length) {
    return fmt::format("{} ({})", show(length, UnitSystem::metric), show(length, UnitSystem::inch));
}

void check_faces(const WornBore& bore, const Entry& entry) {
    constexpr std::size_t faces_of_a_bore = 2;
    if (bore.faces.size() > faces_of_a_bore)
        entry.refuse("faces", fmt::format("are {}, and a bore has {}", bore.faces.size(), faces_of_a_bore),
                     "write one for the near face and one for the far one");
    const auto faces = entry.objects_again("faces");
    for (std::size_t i = 0; i < bore.faces.size(); ++i)
        if (const Length inner = bore.faces[i].inner;
            inner > Length() && inner < bore.finish_diameter - last_digit)
            faces[i].refuse("inner", fmt::format("begins inside the bore of {}", both(bore.finish_diameter)),
                            "begin it at the finish diameter or outside");
}

void check_grooves(const WornBore& bore, const Entry& entry) {
    const auto grooves = entry.objects_again("grooves");
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        if (const Length floor = bore.grooves[i].diameter;
            bore.boss_diameter && *bore.boss_diameter > bore.finish_diameter && floor >= *bore.boss_diameter)
            grooves[i].refuse("diameter",
                              fmt::format("lies outside the boss of {}", both(*bore.boss_diameter)),
                              "measure the floor of the groove across the bore");
    const Length together = ranges::accumulate(bore.grooves, Length(), std::plus<>(), &Groove::width);
    if (bore.grooves.size() > 1 && together > bore.length + last_digit)
        entry.refuse("grooves",
                     fmt::format("are {} wide together, in a bore of {}", both(together), both(bore.length)),
                     "measure them along the bore");
}

/// How far two holes are apart at the wall of the bore, from centre to centre.
Length apart(const Hole& one, const Hole& other, Length radius) {
    const double turned = std::abs(std::remainder((one.clock - other.clock).value(), 2 * std::numbers::pi));
    return in_si<Length>(std::hypot((one.depth - other.depth).value(), turned * radius.value()));
}

void check_holes(const WornBore& bore, const Entry& entry) {
    const auto holes = entry.objects_again("holes");
    for (std::size_t i = 0; i < bore.holes.size(); ++i) {
        const Hole& hole = bore.holes[i];
        const Length half = hole.diameter / 2.0;
        if (hole.diameter >= bore.finish_diameter)
            holes[i].refuse("diameter",
                            fmt::format("is wider than the bore of {}", both(bore.finish_diameter)),
                            "measure the hole again");
        else if (hole.depth <= bore.length &&
                 (half > hole.depth + last_digit || hole.depth + half > bore.length + last_digit))
            holes[i].refuse("depth", fmt::format("puts a hole of {} through a face", both(hole.diameter)),
                            "measure the depth of its centre from the near face");
        for (std::size_t other = 0; other < i && hole.diameter < bore.finish_diameter; ++other)
            if (const Length both_halves = half + bore.holes[other].diameter / 2.0;
                apart(hole, bore.holes[other], bore.finish_diameter / 2.0) < both_halves - last_digit)
                holes[i].refuse(fmt::format("lies in {}: their centres are {} apart, and they reach {}",
                                            element_path("holes", other),
                                            both(apart(hole, bore.holes[other], bore.finish_diameter / 2.0)),
                                            both(both_halves)),
                                "measure depth and clock of both again");
    }
}

} // namespace

void check_possible(const WornBore& bore, const Entry& entry) {
    if (!entry.is_read("finish_diameter") || !entry.is_read("length"))
        return;
    check_faces(bore, entry);
    check_grooves(bore, entry);
    check_holes(bore, entry);
}

} // namespace ringfill
