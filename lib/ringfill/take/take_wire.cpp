#include <ringfill/take/take_wire.hpp>

#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/take/cover.hpp>
#include <ringfill/weld/metal.hpp>

namespace ringfill {
namespace {

constexpr double grams = 1e3;
const Mass same_spool = in_si<Mass>(2e-3);

/// The spools on offer: those the feeder takes, by their names in the table if they are there, or the table's
/// own that are sold where the user is.
std::vector<WirePack> spools_for(const WireUse& use, const Packs& packs, UnitSystem units) {
    std::vector<WirePack> offered;
    for (const Mass& spool : use.spools) {
        WirePack pack{fmt::format("{:.6g} kg spool", spool.value()), "", units, {spool, "practice"}, true};
        for (const WirePack& known : packs.wire)
            if (std::fabs((known.content.value - spool).value()) < same_spool.value())
                pack.name = known.name;
        if (!ranges::any_of(offered, [&](const WirePack& other) { return other.name == pack.name; }))
            offered.push_back(pack);
    }
    if (use.spools.empty())
        for (const WirePack& pack : packs.wire)
            if (pack.stocked && pack.units == units)
                offered.push_back(pack);
    return offered;
}

void cover_with(Need& line, const std::vector<WirePack>& spools, std::optional<double> price_kg) {
    if (spools.empty()) {
        line.why += "; no spool of wire is in the table of packs";
        line.pack_known = false;
        return;
    }
    std::vector<PackSize> sizes;
    for (const WirePack& spool : spools) {
        const double kg = spool.content.value.value();
        PackSize size{std::llround(std::floor(kg * grams + 1e-6)), std::nullopt};
        if (price_kg)
            size.price = pack_price(*price_kg * kg);
        sizes.push_back(size);
    }
    const double all = line.need + line.reserve;
    const Cover best = cover(whole_need(all * grams, 1e-6), sizes);
    for (std::size_t i = 0; i < spools.size(); ++i)
        if (best.counts[i] > 0)
            line.cover.push_back({spools[i].name, best.counts[i]});
    line.supplied = static_cast<double>(best.supplied) / grams;
    line.spare = line.supplied - all;
    std::vector<double> counts;
    std::vector<double> contents;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        counts.push_back(static_cast<double>(best.counts[i]));
        contents.push_back(static_cast<double>(sizes[i].content) / grams);
    }
    work_supply(line, std::move(counts), std::move(contents));
}

/// How need and reserve were reached.
std::vector<Working> need_working(const WireUse& use, const Need& line, double reserve,
                                  const WearParts& wear) {
    const auto kilograms = [](const auto& masses) {
        return masses | ranges::views::transform([](Mass mass) { return mass.value(); }) |
               ranges::to<std::vector<double>>();
    };
    return {{"need",
             "sum(n*m)",
             {{"n", use.counts}, {"m", kilograms(use.wire_each), "kg"}},
             line.need,
             "kg",
             "own"},
            {"reserve",
             "share*need + mu*l + sum(m_trial)",
             {{"share", reserve},
              {"need", line.need, "kg"},
              {"mu", use.linear_mass.value(), "kg/m"},
              {"l", wear.liner_length.value.value(), "m"},
              {"m_trial", kilograms(use.trials | ranges::views::transform(&TrialRing::wire)), "kg"}},
             line.reserve,
             "kg",
             wear.liner_length.source}};
}

std::string why(const WireUse& use, double reserve, Mass liner, const WearParts& wear, UnitSystem units) {
    std::string text = fmt::format("{} for the bores: {} laid plus what the arc loses, and {} starts with {} "
                                   "of trim each; on top {:.3g} %, "
                                   "{} to fill a liner of {}",
                                   show(use.wire, units), show(use.laid, units), use.starts,
                                   show(in_si<Length>(trim_a_start), units), 100 * reserve,
                                   show(liner, units), show_distance(wear.liner_length.value, units));
    for (const TrialRing& trial : use.trials)
        text += fmt::format(", {} for one trial ring the size of {} with {}", show(trial.wire, units),
                            trial.bore, trial.procedure);
    return text;
}

} // namespace

Need take_wire(const WireUse& use, double reserve, const Packs& packs, const WearParts& wear,
               UnitSystem units) {
    const Mass liner = use.linear_mass * wear.liner_length.value;
    Mass on_top = reserve * use.wire + liner;
    for (const TrialRing& trial : use.trials)
        on_top += trial.wire;
    Need line;
    line.item = fmt::format("wire {} {}", use.filler, show_wire(use.diameter, units));
    line.need = use.wire.value();
    line.reserve = on_top.value();
    line.unit = "kg";
    line.why = why(use, reserve, liner, wear, units);
    line.source = "practice";
    line.working = need_working(use, line, reserve, wear);
    cover_with(line, spools_for(use, packs, units), use.price_kg);
    return line;
}

} // namespace ringfill
