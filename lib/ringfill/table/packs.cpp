#include <ringfill/table/packs.hpp>

#include <array>

#include <ringfill/table/put_row.hpp>
#include <ringfill/table/signature.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span kilograms{0.001, 2'000};
constexpr Span litres{1, 1e7};
constexpr Span share{0, 1, true};
constexpr Span litres_a_minute{0, 1'000, true};
constexpr Span kilograms_an_hour{0, 1'000, true};
constexpr std::array unit_words = {"mm"sv, "inch"sv};
constexpr std::array gas_words = {"argon"sv, "argon_mixture"sv, "argon_helium"sv, "carbon_dioxide"sv,
                                  "oxygen"sv};
constexpr std::array piece_words = {"electrodes"sv, "rods"sv};
constexpr std::array fuel_words = {"propane"sv, "acetylene"sv};

constexpr std::array wire_fields = {
    Field{.name = "units", .kind = Kind::word, .required = true, .sample = R"("mm")", .words = unit_words},
    Field{.name = "content_kg",
          .kind = Kind::sourced,
          .required = true,
          .span = kilograms,
          .sample = R"([15, "ISO544"])"},
    Field{.name = "note", .span = table_words},
    Field{.name = "stocked", .kind = Kind::flag, .sample = "true"},
};
constexpr Record wire_record{"a spool", "", wire_fields};

constexpr std::array piece_fields = {
    Field{.name = "units", .kind = Kind::word, .required = true, .sample = R"("mm")", .words = unit_words},
    Field{.name = "holds",
          .kind = Kind::word,
          .required = true,
          .sample = R"("electrodes")",
          .words = piece_words},
    Field{.name = "content_kg",
          .kind = Kind::sourced,
          .required = true,
          .span = kilograms,
          .sample = R"([4, "practice"])"},
    Field{.name = "note", .span = table_words},
    Field{.name = "stocked", .kind = Kind::flag, .sample = "true"},
};
constexpr Record piece_record{"a packet", "", piece_fields};

constexpr std::array gas_fields = {
    Field{.name = "units", .kind = Kind::word, .required = true, .sample = R"("mm")", .words = unit_words},
    Field{.name = "holds", .kind = Kind::word, .required = true, .sample = R"("argon")", .words = gas_words},
    Field{.name = "content_L",
          .kind = Kind::sourced,
          .required = true,
          .span = litres,
          .sample = R"([10580, "own"])"},
    Field{.name = "usable_share",
          .kind = Kind::sourced,
          .required = true,
          .span = share,
          .sample = R"([0.975, "practice"])"},
    Field{.name = "draw_L_min",
          .kind = Kind::sourced,
          .span = litres_a_minute,
          .sample = R"([10, "practice"])"},
    Field{.name = "note", .span = table_words},
    Field{.name = "stocked", .kind = Kind::flag, .sample = "true"},
};
constexpr Record gas_record{"a cylinder", "", gas_fields};

constexpr std::array fuel_fields = {
    Field{.name = "units", .kind = Kind::word, .required = true, .sample = R"("mm")", .words = unit_words},
    Field{
        .name = "holds", .kind = Kind::word, .required = true, .sample = R"("propane")", .words = fuel_words},
    Field{.name = "content_kg",
          .kind = Kind::sourced,
          .required = true,
          .span = kilograms,
          .sample = R"([11, "practice"])"},
    Field{.name = "usable_share",
          .kind = Kind::sourced,
          .required = true,
          .span = share,
          .sample = R"([0.85, "practice"])"},
    Field{.name = "draw_kg_h",
          .kind = Kind::sourced,
          .required = true,
          .span = kilograms_an_hour,
          .sample = R"([0.8, "practice"])"},
    Field{.name = "note", .span = table_words},
    Field{.name = "stocked", .kind = Kind::flag, .sample = "true"},
};
constexpr Record fuel_record{"a fuel cylinder", "", fuel_fields};

constexpr std::array format = {"ringfill-packs/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-packs/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "wire",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &wire_record},
    Field{.name = "pieces",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &piece_record},
    Field{.name = "gas",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &gas_record},
    Field{.name = "fuel",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = "{ ... }",
          .record = &fuel_record},
};
constexpr Record file_record{"the table of packs", "", file_fields};

UnitSystem read_units(const Entry& row) {
    return row.word("units") == "inch" ? UnitSystem::inch : UnitSystem::metric;
}

WirePack read_wire(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    return {name, row.text("note").value_or(""), read_units(row),
            reader.quantity<Mass>("content_kg", 1).value_or(Sourced<Mass>{}),
            row.flag("stocked").value_or(true)};
}

PiecePack read_pieces(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    return {name,
            row.text("note").value_or(""),
            read_units(row),
            row.word("holds").value_or(""),
            reader.quantity<Mass>("content_kg", 1).value_or(Sourced<Mass>{}),
            row.flag("stocked").value_or(true)};
}

GasPack read_gas(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    GasPack pack;
    pack.name = name;
    pack.note = row.text("note").value_or("");
    pack.units = read_units(row);
    pack.holds = row.word("holds").value_or("");
    pack.content = reader.quantity<Volume>("content_L", factor::litre).value_or(Sourced<Volume>{});
    pack.usable_share = reader.number("usable_share").value_or(Sourced<double>{});
    pack.draw = reader.quantity<VolumeFlow>("draw_L_min", factor::litre / factor::minute);
    pack.stocked = row.flag("stocked").value_or(true);
    return pack;
}

FuelPack read_fuel(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    FuelPack pack;
    pack.name = name;
    pack.note = row.text("note").value_or("");
    pack.units = read_units(row);
    pack.holds = row.word("holds").value_or("");
    pack.content = reader.quantity<Mass>("content_kg", 1).value_or(Sourced<Mass>{});
    pack.usable_share = reader.number("usable_share").value_or(Sourced<double>{});
    pack.draw = reader.quantity<MassFlow>("draw_kg_h", 1 / factor::hour).value_or(Sourced<MassFlow>{});
    pack.stocked = row.flag("stocked").value_or(true);
    return pack;
}

} // namespace

Packs read_packs(const std::vector<Document>& files, const Bibliography& sources) {
    Packs packs;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("wire"))
                put_row(packs.wire, read_wire(name, row, known));
            for (const auto& [name, row] : entry.named_objects("pieces"))
                put_row(packs.pieces, read_pieces(name, row, known));
            for (const auto& [name, row] : entry.named_objects("gas"))
                put_row(packs.gas, read_gas(name, row, known));
            for (const auto& [name, row] : entry.named_objects("fuel"))
                put_row(packs.fuel, read_fuel(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return packs;
}

} // namespace ringfill
