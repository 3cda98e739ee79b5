#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/min.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

/// A worn surface as a job writes it.
struct WrittenStation {
    Length depth;
    std::vector<Length> radii = {};
    std::vector<Length> diameters = {};
};
struct WrittenWorn {
    std::optional<Length> diameter;
    std::optional<Length> offset;
    std::optional<Angle> offset_clock;
    std::optional<std::vector<WrittenStation>> stations;
};

/// A station has readings in one form, or none where its depth or one of them is faulty.
void check_station(WrittenStation& station, const Entry& entry) {
    const bool radii = entry.has("radii");
    if (radii == entry.has("diameters"))
        entry.refuse(radii ? "gives radii and diameters" : "gives neither radii nor diameters",
                     "give the readings in one of the two forms");
    else if (entry.is_read("depth") && entry.is_read(radii ? "radii" : "diameters"))
        return;
    station = {};
}

constexpr Field station_fields[] = {
    must<&WrittenStation::depth>("depth", distance, R"("5 mm")", "how deep in the bore, from the near face"),
    field<&WrittenStation::radii>(
        "radii", list_of(size, 3, 360),
        R"(["46.9 mm", "46.4 mm", "46.2 mm", "46.3 mm", "46.6 mm", "46.3 mm", "46.2 mm", "46.4 mm"])",
        "readings from the target axis, at equal clock steps over the whole turn from 12 o'clock, clockwise "
        "seen from the near face"),
    field<&WrittenStation::diameters>("diameters", list_of(size, 2, 180),
                                      R"(["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"])",
                                      "two-point readings, at equal steps over half a turn from 12 o'clock; "
                                      "two-point readings never show three-lobed wear"),
};

constexpr Field worn_fields[] = {
    shown<&WrittenWorn::diameter>("diameter", size, R"("93.4 mm")",
                                  "one worn diameter for the whole bore; or give stations"),
    field<&WrittenWorn::offset>("offset", distance, R"("0.4 mm")",
                                "how far the centre of the worn bore lies off the target axis"),
    field<&WrittenWorn::offset_clock>("offset_clock", turn, R"("180 deg")",
                                      "towards which clock position it lies off, from 12 o'clock"),
    field<&WrittenWorn::stations>(
        "stations", list_of(station_record, 1, 100),
        R"([{ "depth": "5 mm", "diameters": ["93.4 mm", "92.9 mm", "92.4 mm", "92.8 mm"] }])",
        "readings at one or more depths, all in the same form and number"),
};

/// The stations that have readings, judged against each other and the bore.
std::vector<WornStation> judged(const std::vector<WrittenStation>& stations, const Entry& worn,
                                std::optional<Length> bore_length) {
    std::vector<WornStation> good;
    const WrittenStation* first = nullptr;
    const std::vector<Entry> entries = worn.objects_again("stations");
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const auto& [depth, radii, diameters] = stations[i];
        const std::vector<Length>& readings = radii.empty() ? diameters : radii;
        if (readings.empty())
            continue;
        first = first ? first : &stations[i];
        if (bore_length && depth > *bore_length)
            entries[i].refuse("depth", "lies outside the bore", "measure the depth from the near face");
        if (!good.empty() && depth <= good.back().depth)
            entries[i].refuse("depth", "is not deeper than the station before it",
                              "list the stations from the near face on");
        if (radii.empty() != first->radii.empty())
            entries[i].refuse("is in another form than the first station",
                              "give all stations as radii or all as diameters");
        else if (!good.empty() && readings.size() != good.front().readings.size())
            entries[i].refuse(radii.empty() ? "diameters" : "radii",
                              fmt::format("has {} readings, the first station {}", readings.size(),
                                          good.front().readings.size()),
                              "give every station the same number, at the same clock positions");
        good.push_back({depth, readings});
    }
    return good;
}

/// The worn surface as it is read; of one that cannot be told a diameter of nothing.
Worn worn_of(const WrittenWorn& worn, const Entry& entry, std::optional<Length> bore_length) {
    if (entry.has("diameter") == entry.has("stations")) {
        entry.refuse(entry.has("diameter") ? "gives a diameter and stations"
                                           : "gives neither a diameter nor stations",
                     "give the worn surface in one of the two ways");
        return {};
    }
    const Length offset = worn.offset.value_or(Length());
    const Angle clock = worn.offset_clock.value_or(Angle());
    const auto refuse_large_offset = [&](Length smallest_diameter) {
        if (offset > Length() && !(offset < smallest_diameter / 2.0))
            entry.refuse("offset", "is not smaller than the smallest worn radius",
                         "measure how far the worn centre lies off the target axis");
    };
    if (worn.diameter) {
        refuse_large_offset(*worn.diameter);
        return WornDiameter{*worn.diameter, offset, clock};
    }
    std::vector<WornStation> stations =
        judged(worn.stations.value_or(std::vector<WrittenStation>()), entry, bore_length);
    if (stations.empty())
        return {};
    if (!entry.objects_again("stations").back().has("radii")) {
        refuse_large_offset(ranges::min(stations | ranges::views::transform([](const WornStation& station) {
                                            return ranges::min(station.readings);
                                        })));
        return WornDiameters{std::move(stations), offset, clock};
    }
    for (const char* field : {"offset", "offset_clock"})
        if (entry.has(field))
            entry.refuse(field, "stands beside radii",
                         "take it out: radii are measured from the target axis already");
    return WornRadii{std::move(stations)};
}

} // namespace

const Record station_record =
    record_of<WrittenStation, check_station>("a station", "readings at one depth", station_fields);
const Record worn_record =
    record_of<WrittenWorn>("worn", "the worn surface, measured from the target axis", worn_fields);

void read_worn(WornBore& bore, const Entry& entry, const Field& field) {
    if (const auto worn = entry.object(field))
        bore.worn = worn_of(read_record<WrittenWorn>(*worn), *worn,
                            entry.is_read("length") ? std::optional(bore.length) : std::nullopt);
}

Value give_worn(const WornBore& bore) {
    WrittenWorn written;
    const auto write = [&](const std::vector<WornStation>& stations,
                           std::vector<Length> WrittenStation::*form) {
        written.stations.emplace();
        for (const auto& [depth, readings] : stations)
            written.stations->emplace_back(WrittenStation{.depth = depth}).*form = readings;
    };
    if (const auto* round = std::get_if<WornDiameter>(&bore.worn))
        written = {round->diameter, round->offset, round->offset_clock, {}};
    if (const auto* radii = std::get_if<WornRadii>(&bore.worn))
        write(radii->stations, &WrittenStation::radii);
    if (const auto* diameters = std::get_if<WornDiameters>(&bore.worn)) {
        written = {{}, diameters->offset, diameters->offset_clock, {}};
        write(diameters->stations, &WrittenStation::diameters);
    }
    return record_value(worn_record, &written);
}

} // namespace ringfill
