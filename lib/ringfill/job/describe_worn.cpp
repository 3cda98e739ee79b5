#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/min.hpp>

#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

/// A station has readings in one form, or none where its depth or one of them is faulty.
void check_station(WornStation& station, const Entry& entry) {
    const bool radii = entry.has("radii");
    if (radii == entry.has("diameters"))
        entry.refuse(radii ? "gives radii and diameters" : "gives neither radii nor diameters",
                     "give the readings in one of the two forms");
    else if (entry.is_read("depth") && entry.is_read(radii ? "radii" : "diameters"))
        return;
    station = {};
}

constexpr Field station_fields[] = {
    must<&WornStation::depth>("depth", distance, R"("5 mm")", "how deep in the bore, from the near face"),
    field<&WornStation::radii>(
        "radii", list_of(size, 3, 360),
        R"(["46.9 mm", "46.4 mm", "46.2 mm", "46.3 mm", "46.6 mm", "46.3 mm", "46.2 mm", "46.4 mm"])",
        "readings from the target axis, at equal clock steps over the whole turn from 12 o'clock, clockwise "
        "seen from the near face"),
    field<&WornStation::diameters>("diameters", list_of(size, 2, 180),
                                   R"(["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"])",
                                   "two-point readings, at equal steps over half a turn from 12 o'clock; "
                                   "two-point readings never show three-lobed wear"),
};

constexpr Field worn_fields[] = {
    shown<&Worn::diameter>("diameter", size, R"("93.4 mm")",
                           "one worn diameter for the whole bore; or give stations"),
    field<&Worn::offset>("offset", distance, R"("0.4 mm")",
                         "how far the centre of the worn bore lies off the target axis"),
    field<&Worn::offset_clock>("offset_clock", turn, R"("180 deg")",
                               "towards which clock position it lies off, from 12 o'clock"),
    field<&Worn::stations>(
        "stations", list_of(station_record, 1, 100),
        R"([{ "depth": "5 mm", "diameters": ["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"] }])",
        "readings at one or more depths, all in the same form and number"),
};

void check_offset(const Worn& worn, const Entry& entry, Length smallest_diameter) {
    const Length offset = worn.offset.value_or(Length());
    if (offset > Length() && !(offset < smallest_diameter / 2.0))
        entry.refuse("offset", "is not smaller than the smallest worn radius",
                     "measure how far the worn centre lies off the target axis");
}

const std::vector<Length>& readings_of(const WornStation& station) {
    return station.radii.empty() ? station.diameters : station.radii;
}

/// The stations that have readings, judged against each other, the offset and the bore.
void check_stations(const Worn& worn, const Entry& entry, std::optional<Length> bore_length) {
    const std::vector<Entry> entries = entry.objects_again("stations");
    const WornStation* first = nullptr;
    const WornStation* before = nullptr;
    std::vector<Length> all;
    for (std::size_t i = 0; i < worn.stations.size(); ++i) {
        const WornStation& station = worn.stations[i];
        const std::vector<Length>& readings = readings_of(station);
        if (readings.empty())
            continue;
        first = first ? first : &station;
        if (bore_length && station.depth > *bore_length)
            entries[i].refuse("depth", "lies outside the bore", "measure the depth from the near face");
        if (before && station.depth <= before->depth)
            entries[i].refuse("depth", "is not deeper than the station before it",
                              "list the stations from the near face on");
        if (station.radii.empty() != first->radii.empty())
            entries[i].refuse("is in another form than the first station",
                              "give all stations as radii or all as diameters");
        else if (readings.size() != readings_of(*first).size())
            entries[i].refuse(station.radii.empty() ? "diameters" : "radii",
                              fmt::format("has {} readings, the first station {}", readings.size(),
                                          readings_of(*first).size()),
                              "give every station the same number, at the same clock positions");
        before = &station;
        ranges::push_back(all, readings);
    }
    if (!first)
        return;
    if (!entries.back().has("radii"))
        return check_offset(worn, entry, ranges::min(all));
    for (const char* field : {"offset", "offset_clock"})
        if (entry.has(field))
            entry.refuse(field, "stands beside radii",
                         "take it out: radii are measured from the target axis already");
}

} // namespace

const Record station_record =
    record_of<WornStation, check_station>("a station", "readings at one depth", station_fields);
const Record worn_record =
    record_of<Worn>("worn", "the worn surface, measured from the target axis", worn_fields);

void read_worn(WornBore& bore, const Entry& entry, const Field& field) {
    const auto worn = entry.object(field);
    if (!worn)
        return;
    fill_record(bore.worn, *worn);
    const bool has_diameter = worn->has("diameter");
    if (has_diameter == worn->has("stations"))
        worn->refuse(has_diameter ? "gives a diameter and stations" : "gives neither a diameter nor stations",
                     "give the worn surface in one of the two ways");
    else if (bore.worn.diameter)
        check_offset(bore.worn, *worn, *bore.worn.diameter);
    else
        check_stations(bore.worn, *worn, entry.is_read("length") ? std::optional(bore.length) : std::nullopt);
}

Value give_worn(const WornBore& bore) {
    return record_value(worn_record, &bore.worn);
}

} // namespace ringfill
