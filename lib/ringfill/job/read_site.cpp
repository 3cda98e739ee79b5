#include <ringfill/job/read_site.hpp>

#include <ringfill/units/measured_field.hpp>

namespace ringfill {

Site read_site(const Entry& entry) {
    Site site;
    site.ambient = measured<Temperature>(entry, "ambient");
    site.wet = entry.flag("wet");
    site.indoors = entry.flag("indoors");
    site.enclosed = entry.flag("enclosed");
    site.room_volume = measured<Volume>(entry, "room_volume");
    site.ceiling = measured<Length>(entry, "ceiling");
    const auto words_of = [&](std::string_view name) {
        return entry.has(name) ? std::optional(entry.words(name)) : std::nullopt;
    };
    site.near = words_of("near");
    site.coating = entry.word("coating");
    site.residue = words_of("residue");
    site.crew = words_of("crew");
    site.fire_rules = entry.text("fire_rules");
    return site;
}

Torch read_torch(const Entry& entry) {
    return {measured<Length>(entry, "smallest_bore"), measured<Length>(entry, "reach")};
}

Heater read_heater(const Entry& entry) {
    return {entry.word("kind").value_or(""), measured<Power>(entry, "power"), entry.number("efficiency")};
}

BoringBar read_boring_bar(const Entry& entry) {
    BoringBar bar;
    bar.bar_speeds = measured_list<Turning>(entry, "bar_speeds");
    bar.cutting_speed = measured<Speed>(entry, "cutting_speed");
    bar.feed = measured<Length>(entry, "feed");
    bar.rough_cut = measured<Length>(entry, "rough_cut");
    bar.edge_life = measured<Time>(entry, "edge_life");
    bar.stroke = measured<Length>(entry, "stroke");
    return bar;
}

} // namespace ringfill
