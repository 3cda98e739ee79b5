#include "identity/edge_job.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/job/description.hpp>

#include "identity/random_job.hpp"

namespace ringfill::testing {
namespace {

Value::Object& object_in(Value& value) {
    return std::get<Value::Object>(value.held);
}

void put(Value& object, std::string_view name, Value value) {
    for (Member& member : object_in(object))
        if (member.name == name) {
            member.value = std::move(value);
            return;
        }
    object_in(object).push_back({std::string(name), std::move(value)});
}

void leave_out(Value& object, std::string_view name) {
    std::erase_if(object_in(object), [&](const Member& member) { return member.name == name; });
}

/// An object of a job with its description.
struct Spot {
    Value* object;
    const Record* record;
};

void add_spots(std::vector<Spot>& spots, Value& object, const Record& record) {
    if (!object.object())
        return;
    spots.push_back({&object, &record});
    for (Member& member : object_in(object)) {
        const Field* field = record.find(member.name);
        if (!field || !field->record)
            continue;
        if (auto* list = std::get_if<Value::List>(&member.value.held))
            for (Value& one : *list)
                add_spots(spots, one, *field->record);
        else if (field->shape == Shape::named && member.value.object())
            for (Member& one : object_in(member.value))
                add_spots(spots, one.value, *field->record);
        else
            add_spots(spots, member.value, *field->record);
    }
}

std::vector<Spot> spots_of(Value& job) {
    std::vector<Spot> spots;
    add_spots(spots, job, job_record);
    return spots;
}

/// One of the spots, every record as likely as another.
Spot any_spot(const std::vector<Spot>& spots, Draw& draw) {
    std::vector<const Record*> records;
    for (const Spot& spot : spots)
        if (std::find(records.begin(), records.end(), spot.record) == records.end())
            records.push_back(spot.record);
    const Record* record = draw.of(records);
    std::vector<Spot> alike;
    std::copy_if(spots.begin(), spots.end(), std::back_inserter(alike),
                 [&](const Spot& spot) { return spot.record == record; });
    return draw.of(alike);
}

/// Gives a field that may be left out its sample, as often as the chance says; not those that go with some
/// jobs only.
void dress(Value& job, int percent, Draw& draw) {
    constexpr std::array<std::string_view, 18> choosy = {
        "procedure", "wire_feed",  "deposition_rate", "gas",         "size_limits", "composition", "diameter",
        "stations",  "radii",      "diameters",       "current",     "voltage",     "magnetic",    "spools",
        "line",      "travel_max", "offset",          "offset_clock"};
    std::vector<Spot> spots = spots_of(job);  // what is added is whole already
    std::reverse(spots.begin(), spots.end()); // the inner first: an object that grows moves them
    for (const Spot& spot : spots)
        for (const Field& field : spot.record->fields)
            if (!field.required && has_sample(field) && !spot.object->find(field.name) &&
                draw.chance(percent) && std::find(choosy.begin(), choosy.end(), field.name) == choosy.end())
                put(*spot.object, field.name, sample_of(field));
}

void change_a_field(Value& job, const ShopNames& names, Draw& draw) {
    const Spot spot = any_spot(spots_of(job), draw);
    const Field& field = draw.of(spot.record->fields);
    if (draw.chance(field.required ? 2 : 15))
        return leave_out(*spot.object, field.name);
    put(*spot.object, field.name, edge_value(field, spot.object->find(field.name), names, draw));
}

/// A bore anew, from a hair to metres, worn from nothing to much, in a boss from a skin to a block.
void reshape(Value& bore, Draw& draw) {
    constexpr std::array finishes = {1e-6, 0.1, 1.0, 8.0, 25.0, 44.0, 90.0, 300.0, 1'000.0, 5'000.0, 9'990.0};
    constexpr std::array depths = {0.0, 1e-9, 1e-4, 0.01, 0.3, 2.0, 10.0};
    constexpr std::array lengths = {1e-6, 0.1, 1.0, 5.0, 60.0, 250.0, 2'000.0, 10'000.0};
    constexpr std::array skims = {0.0, 1e-6, 0.5, 5.0};
    constexpr std::array walls = {-1.0, 0.0, 1e-6, 0.1, 1.0, 5.0, 60.0, 3'000.0};
    const double finish = draw.of(finishes);
    const double depth = draw.of(depths);
    const double skim = draw.of(skims);
    put(bore, "finish_diameter", length_text(finish));
    put(bore, "length", length_text(draw.of(lengths)));
    Value worn{Value::Object{{"diameter", length_text(finish + 2 * depth)}}};
    if (draw.chance(40))
        put(worn, "offset", length_text(depth * (draw.chance(50) ? 0.9 : draw.share() * 1.1)));
    put(bore, "worn", worn);
    put(bore, "skim", draw.chance(20) ? Value("none") : length_text(skim));
    put(bore, "stock", length_text(draw.of(skims)));
    put(bore, "overhang", length_text(draw.of(skims)));
    if (draw.chance(70))
        put(bore, "boss_diameter", length_text(finish + 2 * depth + 2 * skim + 2 * draw.of(walls)));
    else
        leave_out(bore, "boss_diameter");
    for (const char* name : {"size_class", "size_limits", "heat_wall"})
        leave_out(bore, name);
}

/// Any metal with any filler in one of its sizes, at settings inside its windows or beside them.
Value any_pair(const Shop& shop, const ShopNames& names, Draw& draw) {
    const Family* family = &draw.of(shop.registry.families()).get();
    while (family->fillers.empty())
        family = &draw.of(shop.registry.families()).get();
    const Filler& filler = draw.of(family->fillers);
    const WireSize& size = draw.of(filler.sizes);
    const double current =
        size.window.current ? size.window.current->value.first.value() : draw.size(60, 300);
    Value procedure{Value::Object{{"filler", family->name + '/' + filler.name}, {"wire", size.name + " mm"}}};
    put(procedure, "travel", fmt::format("{} mm/min", draw.size(60, 900)));
    put(procedure, "current", fmt::format("{} A", current * draw.size(0.9, 1.6)));
    if (draw.chance(80))
        put(procedure, "voltage", fmt::format("{} V", draw.size(10, 35)));
    if (!filler.gases.empty())
        put(procedure, "gas", draw.of(filler.gases));
    if (filler.form == FillerForm::rod)
        put(procedure, "deposition_rate", fmt::format("{} kg/h", draw.size(0.1, 3)));
    else if (filler.form != FillerForm::stick && draw.chance(80))
        put(procedure, "wire_feed", fmt::format("{} m/min", draw.size(1, 16)));
    const std::string base = draw.chance(95) ? draw.of(names.bases) : "unknown";
    Value bore{Value::Object{{"name", "b"}, {"base", base}}};
    reshape(bore, draw);
    put(bore, "finish_diameter", "90 mm");
    put(bore, "length", length_text(draw.size(10, 200)));
    put(bore, "worn", Value::Object{{"diameter", length_text(90 + draw.size(0, 9))}});
    put(bore, "boss_diameter", length_text(draw.size(110, 400)));
    put(bore, "skim", length_text(draw.size(0, 1.5)));
    Value job{Value::Object{
        {"format", "ringfill-job/1"}, {"title", "at the edges"}, {"units", draw.chance(50) ? "mm" : "inch"}}};
    put(job, "procedures", Value::Object{{"p", procedure}});
    put(job, "bores", Value::List{bore});
    return job;
}

Value sound_job(std::uint64_t seed, const Shop& shop, const ShopNames& names,
                const std::vector<std::string>& samples, Draw& draw) {
    const int kind = draw.whole(0, 9);
    if (kind < 4)
        return any_pair(shop, names, draw);
    const UnitSystem units = draw.chance(30) ? UnitSystem::inch : UnitSystem::metric;
    return parse("job.json", kind < 7 ? text_of(random_sketch(seed), units) : draw.of(samples), Origin::job)
        .root;
}

} // namespace

std::string edge_job(std::uint64_t seed, const Shop& shop, const std::vector<std::string>& samples) {
    constexpr std::array chances = {0, 10, 40};
    constexpr std::array changes = {0, 1, 1, 1, 2, 2, 3, 5, 12};
    static const ShopNames names = names_in(shop);
    Draw draw(seed);
    Value job = sound_job(seed, shop, names, samples, draw);
    dress(job, draw.of(chances), draw);
    if (draw.chance(25)) {
        auto& bores = std::get<Value::List>(const_cast<Value*>(job.find("bores"))->held);
        reshape(bores[static_cast<std::size_t>(draw.whole(0, static_cast<int>(bores.size()) - 1))], draw);
    }
    for (int i = draw.of(changes); i > 0; --i)
        change_a_field(job, names, draw);
    return write_json(job);
}

} // namespace ringfill::testing
