#include <algorithm>

#include <fmt/format.h>

#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;
/// A worn surface as a job writes it.
struct WrittenWorn {
    std::optional<Length> diameter;
    Length offset;
    Angle offset_clock;
    std::vector<WornStation> stations;
};

bool has_radii(const Entry& station) {
    return station.has("radii");
}

/// A station has readings in one form, or none where its depth or one of them is faulty.
void check_station(WornStation& station, const Entry& entry) {
    const bool radii = has_radii(entry);
    if (radii == entry.has("diameters"))
        entry.refuse(radii ? "gives radii and diameters" : "gives neither radii nor diameters",
                     "give the readings in one of the two forms");
    else if (entry.is_read("depth") && entry.is_read(radii ? "radii" : "diameters"))
        return;
    station.readings.clear();
}

constexpr Field station_fields[] = {
    must<&WornStation::depth>("depth", distance, "how deep in the bore, from the near face", R"("5 mm")"),
    field<&WornStation::readings>(
        "radii", size,
        "readings from the target axis, at equal clock steps over the whole turn from 12 o'clock, clockwise "
        "seen from the near face",
        R"(["46.9 mm", "46.4 mm", "46.2 mm", "46.3 mm", "46.6 mm", "46.3 mm", "46.2 mm", "46.4 mm"])")
        .list(3, 360),
    field<&WornStation::readings>("diameters", size,
                                  "two-point readings, at equal steps over half a turn from 12 o'clock; "
                                  "two-point readings never show three-lobed wear",
                                  R"(["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"])")
        .list(2, 180),
};

constexpr Field worn_fields[] = {
    field<&WrittenWorn::diameter>("diameter", size, "one worn diameter for the whole bore; or give stations",
                                  R"("93.4 mm")")
        .starts(),
    field<&WrittenWorn::offset>(
        "offset", distance, "how far the centre of the worn bore lies off the target axis", R"("0.4 mm")"),
    field<&WrittenWorn::offset_clock>(
        "offset_clock", turn, "towards which clock position it lies off, from 12 o'clock", R"("180 deg")"),
    field<&WrittenWorn::stations>(
        "stations", station_record, "readings at one or more depths, all in the same form and number",
        R"([{ "depth": "5 mm", "diameters": ["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"] }])")
        .list(1, 100),
};

/// The stations that have readings, judged against each other and the bore.
std::vector<WornStation> judged(const std::vector<WornStation>& stations, const std::vector<Entry>& entries,
                                std::optional<Length> bore_length) {
    std::vector<WornStation> good;
    const Entry* first = nullptr;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const auto& [depth, readings] = stations[i];
        if (readings.empty())
            continue;
        first = first ? first : &entries[i];
        if (bore_length && depth > *bore_length)
            entries[i].refuse("depth", "lies outside the bore", "measure the depth from the near face");
        if (!good.empty() && depth <= good.back().depth)
            entries[i].refuse("depth", "is not deeper than the station before it",
                              "list the stations from the near face on");
        if (has_radii(entries[i]) != has_radii(*first))
            entries[i].refuse("is in another form than the first station",
                              "give all stations as radii or all as diameters");
        else if (!good.empty() && readings.size() != good.front().readings.size())
            entries[i].refuse(has_radii(*first) ? "radii" : "diameters",
                              fmt::format("has {} readings, the first station {}", readings.size(),
                                          good.front().readings.size()),
                              "give every station the same number, at the same clock positions");
        good.push_back(stations[i]);
    }
    return good;
}

void refuse_large_offset(const Entry& entry, Length offset, Length smallest_diameter) {
    if (offset > Length() && !(offset < smallest_diameter / 2.0))
        entry.refuse("offset", "is not smaller than the smallest worn radius",
                     "measure how far the worn centre lies off the target axis");
}

Length smallest_reading(const std::vector<WornStation>& stations) {
    std::vector<Length> least;
    for (const WornStation& station : stations)
        least.push_back(*std::min_element(station.readings.begin(), station.readings.end()));
    return *std::min_element(least.begin(), least.end());
}

std::optional<Worn> worn_of(const WrittenWorn& worn, const Entry& entry, std::optional<Length> bore_length) {
    if (entry.has("diameter") == entry.has("stations")) {
        entry.refuse(entry.has("diameter") ? "gives a diameter and stations"
                                           : "gives neither a diameter nor stations",
                     "give the worn surface in one of the two ways");
        return std::nullopt;
    }
    if (worn.diameter) {
        refuse_large_offset(entry, worn.offset, *worn.diameter);
        return WornDiameter{*worn.diameter, worn.offset, worn.offset_clock};
    }
    const std::vector<Entry> entries = entry.objects_again("stations");
    std::vector<WornStation> stations = judged(worn.stations, entries, bore_length);
    if (stations.empty())
        return std::nullopt;
    if (!has_radii(entries.back())) {
        refuse_large_offset(entry, worn.offset, smallest_reading(stations));
        return WornDiameters{std::move(stations), worn.offset, worn.offset_clock};
    }
    for (const char* field : {"offset", "offset_clock"})
        if (entry.has(field))
            entry.refuse(field, "stands beside radii",
                         "take it out: radii are measured from the target axis already");
    return WornRadii{std::move(stations)};
}

Value stations_value(const std::vector<WornStation>& stations, const char* form) {
    Value::List list;
    for (const auto& [depth, readings] : stations) {
        Value::Object station{{"depth", depth.value()}};
        if (!readings.empty())
            station.push_back({form, FieldOf<std::vector<Length>>::give({}, readings)});
        list.emplace_back(std::move(station));
    }
    return list;
}

} // namespace

constinit const Record station_record =
    record_of<WornStation, check_station>("a station", "readings at one depth", station_fields);
constinit const Record worn_record =
    record_of<WrittenWorn>("worn", "the worn surface, measured from the target axis", worn_fields);

void read_worn(WornBore& bore, const Entry& entry, const Field& field) {
    if (const auto worn = entry.object(field))
        bore.worn = worn_of(read_record<WrittenWorn>(*worn), *worn,
                            entry.is_read("length") ? std::optional(bore.length) : std::nullopt)
                        .value_or(Worn());
}

Value give_worn(const WornBore& bore) {
    return std::visit(
        [](const auto& worn) {
            constexpr bool radii = std::is_same_v<decltype(worn), const WornRadii&>;
            Value::Object value;
            if constexpr (requires { worn.diameter; })
                value.push_back({"diameter", worn.diameter.value()});
            else
                value.push_back({"stations", stations_value(worn.stations, radii ? "radii" : "diameters")});
            if constexpr (!radii) {
                value.push_back({"offset", worn.offset.value()});
                value.push_back({"offset_clock", worn.offset_clock.value()});
            }
            return Value(std::move(value));
        },
        bore.worn);
}

} // namespace ringfill
