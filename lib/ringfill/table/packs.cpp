#include <ringfill/table/packs.hpp>

#include <cmath>

#include <ringfill/table/named_numbers.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr Span kilograms{0.001, 2'000};
constexpr Span gas_volume{1, 1e7};
constexpr Span usable{0, 1, true};
constexpr Span litres_a_minute{0, 1'000, true};
constexpr Span kilograms_an_hour{0, 1'000, true};
constexpr std::string_view gas_words[] = {"argon", "argon_mixture", "argon_helium", "carbon_dioxide",
                                          "oxygen"};
constexpr std::string_view piece_words[] = {"electrodes", "rods"};
constexpr std::string_view fuel_words[] = {"propane", "acetylene"};

/// A mass in the name of a pack is what it holds, to a tenth: a shop may write the net one.
template <class OnePack>
void check_mass(OnePack& pack, const Entry& row) {
    if constexpr (std::is_same_v<decltype(pack.content.value), Mass>)
        for (const auto& [number, word] : numbers_in(pack.name)) {
            const double unit = word == "kg" ? 1 : word == "lb" || word == "lbs" ? factor::pound : 0;
            const double named = number * unit;
            if (named > 0 && !pack.content.source.empty() &&
                std::abs(pack.content.value.value() - named) > 0.1 * named)
                row.refuse("content_kg", "is not the mass in the name of the pack",
                           "write the mass that it holds, in both");
        }
}

/// What every pack has, around its own.
template <class OnePack, class... Made>
constexpr auto pack_record(std::string_view name, const Made&... own) {
    return table_record<OnePack, check_mass<OnePack>>(
        name, field<&OnePack::units>("units", unit_words, R"("mm")").required(), own...,
        field<&OnePack::note>("note", table_words), field<&OnePack::stocked>("stocked", "true"));
}

constexpr auto wire_pack_record = pack_record<WirePack>(
    "a spool", field<&WirePack::content>("content_kg", kilograms, R"([15, "ISO544"])").required());
constexpr auto piece_pack_record = pack_record<PiecePack>(
    "a packet", field<&PiecePack::holds>("holds", piece_words, R"("electrodes")").required(),
    field<&PiecePack::content>("content_kg", kilograms, R"([4, "practice"])").required());
constexpr auto gas_pack_record = pack_record<GasPack>(
    "a cylinder", field<&GasPack::holds>("holds", gas_words, R"("argon")").required(),
    field<&GasPack::content>("content_L", gas_volume, R"([10580, "own"])").required(),
    field<&GasPack::usable_share>("usable_share", usable, R"([0.975, "practice"])").required(),
    field<&GasPack::draw>("draw_L_min", litres_a_minute, R"([10, "practice"])"));
constexpr auto fuel_pack_record = pack_record<FuelPack>(
    "a fuel cylinder", field<&FuelPack::holds>("holds", fuel_words, R"("propane")").required(),
    field<&FuelPack::content>("content_kg", kilograms, R"([11, "practice"])").required(),
    field<&FuelPack::usable_share>("usable_share", usable, R"([0.85, "practice"])").required(),
    field<&FuelPack::draw>("draw_kg_h", kilograms_an_hour, R"([0.8, "practice"])"));

} // namespace

Packs read_packs(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Packs, R"("ringfill-packs/1")">(
        files, sources, "the table of packs", field<&Packs::wire>("wire", wire_pack_record, "{ ... }"),
        field<&Packs::pieces>("pieces", piece_pack_record, "{ ... }"),
        field<&Packs::gas>("gas", gas_pack_record, "{ ... }"),
        field<&Packs::fuel>("fuel", fuel_pack_record, "{ ... }"));
}

} // namespace ringfill
