#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/take/needs.hpp>
#include <ringfill/take/offers.hpp>
#include <ringfill/weld/bore_weld.hpp>

namespace ringfill {
namespace {

const Mass same_spool = in_si<Mass>(2e-3);

void offer_filler(std::vector<Offer>& offers, const std::string& name, std::int64_t content, Mass filler,
                  const std::optional<double>& price_kg) {
    const double kg = filler.value();
    offers.push_back(
        {name, content, 0, price_kg ? std::optional(pack_price(*price_kg * kg)) : std::nullopt, kg});
}

/// The spools on offer: those the feeder takes, by their names in the table if they are there, or the table's
/// own that are sold where the user is.
std::vector<Offer> spools_for(const WireUse& use, const Packs& packs, UnitSystem units) {
    std::vector<Offer> offers;
    const auto offer = [&](const std::string& name, Mass spool) {
        if (ranges::find(offers, name, &Offer::name) == offers.end())
            offer_filler(offers, name, whole_down(spool.value() * grams), spool, use.price_kg);
    };
    for (const Mass& spool : use.spools) {
        std::string name = fmt::format("{:.6g} kg spool", spool.value());
        for (const WirePack& known : packs.wire)
            if (std::fabs((known.content.value - spool).value()) < same_spool.value())
                name = known.name;
        offer(name, spool);
    }
    if (use.spools.empty())
        for (const WirePack& pack : sold(packs.wire, units))
            offer(pack.name, pack.content.value);
    return offers;
}

/// Packets that hold at least one, by how many whole ones they hold.
std::vector<Offer> packets_for(const PieceUse& use, const Packs& packs, UnitSystem units) {
    std::vector<Offer> offers;
    for (const PiecePack& pack : sold(packs.pieces, units, use.kind == NeedKind::rod ? "rods" : "electrodes"))
        if (const double whole = std::floor((pack.content.value / use.each).value() + 1e-9); whole >= 1)
            offer_filler(offers, pack.name, std::llround(whole), pack.content.value, use.price_kg);
    return offers;
}

std::vector<double> kilograms(const std::vector<Mass>& masses) {
    std::vector<double> all;
    for (const Mass& mass : masses)
        all.push_back(mass.value());
    return all;
}

std::string for_trial_ring(const std::string& amount, const TrialRing& trial) {
    return fmt::format(", {} for one trial ring the size of {} with {}", amount, trial.bore, trial.procedure);
}

Need worn_through(NeedKind kind, const WireUse& use, const Sourced<Time>& life) {
    const double need = std::ceil((use.arc / life.value).value() - 1e-9);
    return by_the_piece(
        need_of(kind, use.filler, use.diameter,
                {need,
                 "ceil(t/life - 1e-9)",
                 {{"t", in_seconds(use.arc)}, {"life", in_seconds(life.value)}},
                 life.source},
                spares(need, 1, kind)),
        fmt::format("{} of arc, one lasts {}; and one spare", show(use.arc), show(life.value)), life.source);
}

} // namespace

Need wire_need(const WireUse& use, double reserve, const Packs& packs, const WearParts& wear,
               UnitSystem units) {
    const Mass liner = use.linear_mass * wear.liner_length.value;
    Mass on_top = reserve * use.wire + liner;
    std::vector<Mass> trials;
    for (const TrialRing& trial : use.trials) {
        on_top += trial.wire;
        trials.push_back(trial.wire);
    }
    Need line = need_of(
        NeedKind::wire, use.filler, use.diameter,
        {use.wire.value(), "sum(n*m)", {{"n", use.counts}, {"m", kilograms(use.wire_each), "kg"}}, "own"},
        {on_top.value(),
         "share*need + mu*l + sum(m_trial)",
         {{"share", reserve},
          {"need", use.wire.value(), "kg"},
          {"mu", in_kg_m(use.linear_mass)},
          {"l", in_metres(wear.liner_length.value)},
          {"m_trial", kilograms(trials), "kg"}},
         wear.liner_length.source});
    line.why = fmt::format("{} for the bores: {} laid plus what the arc loses, and {} starts with {} of trim "
                           "each; on top {:.3g} %, {} to fill a liner of {}",
                           show(use.wire, units), show(use.laid, units), use.starts,
                           show(in_si<Length>(trim_a_start), units), 100 * reserve, show(liner, units),
                           show_distance(wear.liner_length.value, units));
    for (const TrialRing& trial : use.trials)
        line.why += for_trial_ring(show(trial.wire, units), trial);
    line.source = "practice";
    load_best(line, spools_for(use, packs, units), grams, "spool of wire");
    return line;
}

Need piece_need(const PieceUse& use, double reserve, const Packs& packs, UnitSystem units) {
    double need = 0;
    for (std::size_t i = 0; i < use.counts.size(); ++i)
        need += use.counts[i] * use.pieces_each[i];
    double on_top = std::ceil(reserve * need - 1e-9);
    std::vector<double> trials;
    std::string trial_rings;
    for (const TrialRing& trial : use.trials) {
        trials.push_back(std::round((trial.wire / use.each).value()));
        on_top += trials.back();
        trial_rings += for_trial_ring(fmt::format("{:.0f}", trials.back()), trial);
    }
    Need line = need_of(use.kind, use.filler, use.diameter,
                        {need, "sum(n*k)", {{"n", use.counts}, {"k", use.pieces_each}}, "own"},
                        {on_top,
                         "ceil(share*need - 1e-9) + sum(k_trial)",
                         {{"share", reserve}, {"need", need, "pieces"}, {"k_trial", trials}}});
    line.why = fmt::format(
        "{} laid; one is {} long and weighs {}, a stub of {} is thrown away, and the rest gives {} of weld "
        "metal; each bore takes whole ones; on top {:.3g} %{}",
        show(use.laid, units), show(use.length, units), show(use.each, units), show(use.stub, units),
        show(use.usable, units), 100 * reserve, trial_rings);
    line.source = "practice";
    load_best(line, packets_for(use, packs, units), 1, "packet that holds them");
    return line;
}

std::vector<Need> wear_part_needs(const WireUse& use, const WearParts& wear, UnitSystem units) {
    std::vector<Need> lines{worn_through(NeedKind::contact_tip, use, wear.tip_life),
                            worn_through(NeedKind::gas_nozzle, use, wear.nozzle_life)};
    const Sourced<Mass>& life = wear.liner_life;
    if (use.wire > life.value)
        lines.push_back(by_the_piece(
            need_of(NeedKind::liner, use.filler, use.diameter,
                    {1,
                     "max(min(floor(m/life), 1), 0)",
                     {{"m", in_kg(use.wire)}, {"life", in_kg(life.value)}},
                     life.source},
                    spares(1, 0, NeedKind::liner)),
            fmt::format("{} of wire, one lasts {}", show(use.wire, units), show(life.value, units)),
            life.source));
    return lines;
}

} // namespace ringfill
