#include <ringfill/job/read_worn.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

struct Stations {
    std::vector<WornStation> list;
    bool are_radii = false;
    Length smallest_reading;
};

/// One station's readings, or nothing if it gives neither form or both, or a reading is faulty.
std::optional<std::vector<Length>> read_readings(const Entry& entry, bool& are_radii) {
    const bool radii = entry.has("radii");
    if (radii == entry.has("diameters")) {
        entry.refuse(entry.value(), entry.path(),
                     radii ? "gives radii and diameters" : "gives neither radii nor diameters",
                     "give the readings in one of the two forms");
        return std::nullopt;
    }
    are_radii = radii;
    const char* field = radii ? "radii" : "diameters";
    auto readings = measured_list<Length>(entry, field);
    const auto* typed = entry.find(field)->list();
    if (!typed || readings.size() < typed->size())
        return std::nullopt;
    return readings;
}

void check_depth(const Entry& entry, Length depth, std::optional<Length> length,
                 const std::vector<WornStation>& before) {
    if (length && depth > *length)
        entry.refuse("depth", "lies outside the bore", "measure the depth from the near face");
    if (!before.empty() && depth <= before.back().depth)
        entry.refuse("depth", "is not deeper than the station before it",
                     "list the stations from the near face on");
}

Stations read_stations(const Entry& worn, std::optional<Length> length) {
    Stations stations;
    for (const Entry& entry : worn.objects("stations")) {
        bool are_radii = false;
        const auto depth = measured<Length>(entry, "depth");
        const auto readings = read_readings(entry, are_radii);
        if (!depth || !readings)
            continue;
        check_depth(entry, *depth, length, stations.list);
        if (!stations.list.empty() && are_radii != stations.are_radii)
            entry.refuse(entry.value(), entry.path(), "is in another form than the first station",
                         "give all stations as radii or all as diameters");
        else if (!stations.list.empty() && readings->size() != stations.list.front().readings.size())
            entry.refuse(are_radii ? "radii" : "diameters",
                         fmt::format("has {} readings, the first station {}", readings->size(),
                                     stations.list.front().readings.size()),
                         "give every station the same number, at the same clock positions");
        const Length smallest = *std::min_element(readings->begin(), readings->end());
        stations.smallest_reading =
            stations.list.empty() ? smallest : std::min(smallest, stations.smallest_reading);
        stations.are_radii = are_radii;
        stations.list.push_back({*depth, *readings});
    }
    return stations;
}

void refuse_large_offset(const Entry& entry, Length offset, Length smallest_radius) {
    if (offset > Length() && !(offset < smallest_radius))
        entry.refuse("offset", "is not smaller than the smallest worn radius",
                     "measure how far the worn centre lies off the target axis");
}

} // namespace

std::optional<Worn> read_worn(const Entry& entry, std::optional<Length> length) {
    const auto diameter = measured<Length>(entry, "diameter");
    const Length offset = measured<Length>(entry, "offset").value_or(Length());
    const Angle clock = measured<Angle>(entry, "offset_clock").value_or(Angle());
    if (entry.has("diameter") == entry.has("stations")) {
        entry.refuse(entry.value(), entry.path(),
                     entry.has("diameter") ? "gives a diameter and stations"
                                           : "gives neither a diameter nor stations",
                     "give the worn surface in one of the two ways");
        return std::nullopt;
    }
    if (diameter) {
        refuse_large_offset(entry, offset, *diameter / 2.0);
        return WornDiameter{*diameter, offset, clock};
    }
    Stations stations = read_stations(entry, length);
    if (stations.list.empty())
        return std::nullopt;
    if (!stations.are_radii) {
        refuse_large_offset(entry, offset, stations.smallest_reading / 2.0);
        return WornDiameters{std::move(stations.list), offset, clock};
    }
    for (const char* field : {"offset", "offset_clock"})
        if (entry.has(field))
            entry.refuse(field, "stands beside radii",
                         "take it out: radii are measured from the target axis already");
    return WornRadii{std::move(stations.list)};
}

} // namespace ringfill
