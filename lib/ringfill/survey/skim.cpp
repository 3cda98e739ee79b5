#include <ringfill/survey/skim.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

using std::numbers::pi;

std::string both(Length length) {
    return fmt::format("{} ({})", show(length, UnitSystem::metric), show(length, UnitSystem::inch));
}

void refuse_unweldable(const WornBore& bore, const Build& build) {
    std::vector<Fault> faults;
    const auto refuse = [&](const char* field, std::string reason, std::string remedy) {
        faults.push_back(
            fault_at_path(bore.path + field, {}, bore.name + std::move(reason), std::move(remedy)));
    };
    if (build.skim_radius <= build.finish_radius)
        refuse(".worn",
               fmt::format(" cleans up at {}, not over its finish diameter {}: it needs no weld",
                           both(2.0 * build.skim_radius), both(2.0 * build.finish_radius)),
               "check the readings and the finish diameter, or bore it to size without welding");
    if (build.mean_radius <= build.weld_to_radius)
        refuse(
            ".worn",
            fmt::format(" is on average no wider than the {} to weld to", both(2.0 * build.weld_to_radius)),
            "check the readings and the finish diameter, or skim it first");
    if (build.wall && *build.wall <= Length())
        refuse(".boss_diameter",
               fmt::format(" is skimmed to {}, which leaves no wall in a boss of {}",
                           both(2.0 * build.skim_radius), both(*bore.boss_diameter)),
               "check the boss diameter and the readings, or skim less");
    refuse_if_any(Origin::job, faults);
}

} // namespace

Length least_wall(Length finish_radius) {
    return std::max(millimetres(6), Length(finish_radius / 5.0));
}

Build skim_and_size(const WornBore& bore, const Survey& survey) {
    if (survey.smallest.radius <= Length()) // else the bore would be worn inside out
        throw Faulty(Origin::job,
                     fault_at_path(bore.path + ".worn", {},
                                   fmt::format("has readings of {} so far apart that a smooth curve through "
                                               "them passes the target axis",
                                               bore.name),
                                   "check the readings for a slip"));
    Build build;
    build.skimmed = bore.skim.has_value();
    build.skim_radius = survey.largest.radius + bore.skim.value_or(Length());
    build.finish_radius = bore.finish_diameter / 2.0;
    build.weld_to_radius = build.finish_radius - bore.stock;
    build.thickness = build.skim_radius - build.weld_to_radius;
    build.welded_length = bore.length + 2.0 * bore.overhang;
    if (build.skimmed) {
        build.skim_volume = pi * build.skim_radius * build.skim_radius * bore.length - survey.worn_volume;
        build.mean_radius = build.skim_radius;
        build.finished_weld = build.skim_radius - build.finish_radius;
    } else {
        build.mean_radius = in_si<Length>(std::sqrt((survey.worn_volume / (pi * bore.length)).value()));
        build.finished_weld = survey.smallest.radius - build.finish_radius;
        build.finished_weld_clock = survey.smallest.clock;
    }
    build.ring_volume =
        pi * (build.mean_radius * build.mean_radius - build.weld_to_radius * build.weld_to_radius) *
        build.welded_length;
    if (bore.boss_diameter)
        build.wall = *bore.boss_diameter / 2.0 - build.skim_radius;
    refuse_unweldable(bore, build);
    return build;
}

} // namespace ringfill
