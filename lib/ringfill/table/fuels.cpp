#include <ringfill/table/fuels.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr double mega = 1e6;
constexpr Span part_of_power{0, 1, true};

// The words of the job's heater.kind, which stands in a later room; a test holds the two alike.
const std::vector<std::string> heater_words = {"propane", "acetylene", "resistance", "induction"};

constexpr auto heater_record = table_record<HeaterKind>(
    "a kind of heater",
    field<&HeaterKind::efficiency>("efficiency", part_of_power, R"([0.25, "practice"])").required(),
    field<&HeaterKind::range>("efficiency_range", part_of_power, R"([0.15, 0.40, "practice"])"),
    field<&HeaterKind::power>("power_kW", Span{0, 1'000, true}, R"([30, "practice"])").required(),
    field<&HeaterKind::fuel>("fuel", table_words, R"("propane")"),
    field<&HeaterKind::note>("note", table_words));

constexpr auto fuel_record =
    table_record<Fuel>("a fuel",
                       field<&Fuel::net_J_kg>("net_MJ_kg", Span{0, 200, true}, R"([46.35, "propane-LHV"])")
                           .times(mega)
                           .required(),
                       field<&Fuel::oxygen_m3_kg>("oxygen_m3_kg", Span{0, 10, true}, R"([1.0, "practice"])"));

void check_heater(const HeaterKind& heater, const Entry& row, const std::vector<Fuel>& fuels) {
    if (!ranges::contains(heater_words, heater.name))
        row.refuse("is not a heater that a job can ask for", suggest(heater.name, heater_words));
    const auto known = fuels | ranges::views::transform(&Fuel::name) | ranges::to<std::vector>();
    if (!heater.fuel.empty() && !ranges::contains(known, heater.fuel))
        row.refuse("fuel", "is not a known fuel",
                   known.empty() ? std::string("describe it under \"fuels\"") : suggest(heater.fuel, known));
    if (heater.range && !heater.efficiency.source.empty() && is_outside(heater.efficiency, *heater.range))
        row.refuse("efficiency", "lies outside its own range",
                   fmt::format("write a number from {} to {}, or correct \"efficiency_range\"",
                               heater.range->value.first, heater.range->value.second));
}

/// The heaters of a file, which may burn its fuels.
void check_heaters(Fuels& table, const Entry& file) {
    for (const Entry& row : file.objects_again("heaters"))
        for (const HeaterKind& heater : table.heaters)
            if (heater.name == row.name())
                check_heater(heater, row, table.fuels);
}

} // namespace

Fuels read_fuels(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Fuels, R"("ringfill-fuels/1")", check_heaters>(
        files, sources, "the table of fuels", field<&Fuels::heaters>("heaters", heater_record, "{ ... }"),
        field<&Fuels::fuels>("fuels", fuel_record, "{ ... }"));
}

} // namespace ringfill
