#include <ringfill/table/fuels.hpp>

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/document/described.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr double mega = 1e6;
constexpr double kilo = 1e3;

constexpr Span share{0, 1, true};
constexpr Span kilowatts{0, 1'000, true};
constexpr Span megajoules{0, 200, true};
constexpr Span cubic_metres{0, 10, true};

// The words of the job's heater.kind, which stands in a later room; a test holds the two alike.
constexpr std::array heater_words = {"propane"sv, "acetylene"sv, "resistance"sv, "induction"sv};

constexpr std::array heater_fields = {
    Field{.name = "efficiency",
          .kind = Kind::sourced,
          .required = true,
          .span = share,
          .sample = R"([0.25, "practice"])"},
    Field{.name = "efficiency_range",
          .kind = Kind::sourced_range,
          .span = share,
          .sample = R"([0.15, 0.40, "practice"])"},
    Field{.name = "power_kW",
          .kind = Kind::sourced,
          .required = true,
          .span = kilowatts,
          .sample = R"([30, "practice"])"},
    Field{.name = "fuel", .span = table_words, .sample = R"("propane")"},
    Field{.name = "note", .span = table_words},
};
constexpr Record heater_record{"a kind of heater", "", heater_fields};

constexpr std::array fuel_fields = {
    Field{.name = "net_MJ_kg",
          .kind = Kind::sourced,
          .required = true,
          .span = megajoules,
          .sample = R"([46.35, "propane-LHV"])"},
    Field{.name = "oxygen_m3_kg",
          .kind = Kind::sourced,
          .span = cubic_metres,
          .sample = R"([1.0, "practice"])"},
};
constexpr Record fuel_record{"a fuel", "", fuel_fields};

constexpr std::array format = {"ringfill-fuels/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-fuels/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "heaters",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &heater_record},
    Field{.name = "fuels",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &fuel_record},
};
constexpr Record file_record{"the table of fuels", "", file_fields};

/// Whether a name is one of the known.
bool is_among(const std::string& name, const std::vector<std::string>& known) {
    return std::find(known.begin(), known.end(), name) != known.end();
}

void check_heater(const HeaterKind& heater, const Entry& row, const std::vector<Fuel>& fuels) {
    const std::vector<std::string> words(heater_words.begin(), heater_words.end());
    if (!is_among(heater.name, words))
        row.refuse(row.value(), row.path(), "is not a heater that a job can ask for",
                   suggest(heater.name, words));
    const auto known = fuels | ranges::views::transform(&Fuel::name) | ranges::to<std::vector>();
    if (!heater.fuel.empty() && !is_among(heater.fuel, known))
        row.refuse("fuel", "is not a known fuel",
                   known.empty() ? std::string("describe it under \"fuels\"") : suggest(heater.fuel, known));
    if (!heater.range || heater.efficiency.source.empty())
        return;
    const auto [low, high] = heater.range->value;
    if (!(heater.efficiency.value >= low && heater.efficiency.value <= high))
        row.refuse("efficiency", "lies outside its own range",
                   fmt::format("write a number from {} to {}, or correct \"efficiency_range\"", low, high));
}

HeaterKind read_heater(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    HeaterKind heater;
    heater.name = name;
    heater.efficiency = reader.number("efficiency").value_or(Sourced<double>{});
    heater.range = reader.range("efficiency_range");
    heater.power = reader.quantity<Power>("power_kW", kilo).value_or(Sourced<Power>{});
    heater.fuel = row.text("fuel").value_or("");
    heater.note = row.text("note").value_or("");
    return heater;
}

Fuel read_fuel(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    Fuel fuel{name, reader.number("net_MJ_kg").value_or(Sourced<double>{}), reader.number("oxygen_m3_kg")};
    fuel.net_J_kg.value *= mega;
    return fuel;
}

} // namespace

Fuels read_fuels(const std::vector<Document>& files, const Bibliography& sources) {
    Fuels table;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("fuels"))
                put_row(table.fuels, read_fuel(name, row, known));
            for (const auto& [name, row] : entry.named_objects("heaters")) {
                HeaterKind heater = read_heater(name, row, known);
                check_heater(heater, row, table.fuels);
                put_row(table.heaters, std::move(heater));
            }
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return table;
}

} // namespace ringfill
