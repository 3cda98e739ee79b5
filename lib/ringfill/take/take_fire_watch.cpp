#include <ringfill/take/take_fire_watch.hpp>

#include <fmt/format.h>

#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

/// Nobody watches well for longer [common practice, no source].
const Time long_watch = in_si<Time>(8 * 3'600);

Need one_of(std::string item, std::string why, std::string source, Charge charge) {
    Need line;
    line.item = std::move(item);
    line.need = 1;
    line.unit = "pieces";
    line.supplied = 1;
    line.why = std::move(why);
    line.source = std::move(source);
    line.charge = charge;
    line.working = {{"need", "1*n", {{"n", 1, "pieces"}}, 1, "pieces", line.source},
                    {"reserve", "0*n", {{"n", 1, "pieces"}}, 0, "pieces", line.source}};
    work_supply(line, {line.supplied}, {1});
    return line;
}

} // namespace

std::vector<Need> take_fire_watch(const FireWatch& watch) {
    const std::string how_long =
        watch.periods.empty()
            ? std::string()
            : fmt::format(", {} in all{}", show(watch.total),
                          watch.total > long_watch ? ": more than one can watch, so bring relief" : "");
    const std::string looks =
        watch.checks_for ? fmt::format(", and looks for {} after that", show(watch.checks_for->value))
                         : std::string();
    return {one_of("fire watch, a second person",
                   fmt::format("not the one who welds; from the first flame to {} after the last heat{}{}",
                               show(watch.after.value), how_long, looks),
                   watch.after.source, Charge::by_hours),
            one_of("extinguisher 2-A:20-B:C", "in the hand of the fire watch, besides the one on the machine",
                   "practice", Charge::tool)};
}

} // namespace ringfill
