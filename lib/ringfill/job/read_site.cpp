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

} // namespace ringfill
