#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>
#include <ringfill/take/offers.hpp>
#include <ringfill/weld/bore_weld.hpp>

namespace ringfill {
namespace {

const Mass same_spool = in_si<Mass>(2e-3);

Offer filler_offer(const std::string& name, std::int64_t content, Mass filler,
                   const std::optional<double>& price_kg) {
    const double kg = filler.value();
    return {content, price_kg ? std::optional(pack_price(*price_kg * kg)) : std::nullopt, name, 0, kg};
}

/// The spools on offer: those the feeder takes, by their names in the table if they are there, or the table's
/// own that are sold where the user is.
std::vector<Offer> spools_for(const FillerUse& use, const Packs& packs, UnitSystem units) {
    std::vector<Offer> offers;
    const auto offer = [&](const std::string& name, Mass spool) {
        if (ranges::find(offers, name, &Offer::name) == offers.end())
            offers.push_back(filler_offer(name, whole_down(spool.value() * grams), spool, use.price_kg));
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
std::vector<Offer> packets_for(const FillerUse& use, const Packs& packs, UnitSystem units) {
    std::vector<Offer> offers;
    for (const PiecePack& pack :
         sold(packs.pieces, units, use.piece->form == FillerForm::rod ? "rods" : "electrodes"))
        if (const double whole = std::floor((pack.content.value / use.piece->mass).value() + 1e-9);
            whole >= 1)
            offers.push_back(filler_offer(pack.name, std::llround(whole), pack.content.value, use.price_kg));
    return offers;
}

/// @param amount of a trial, in words.
template <class Amount>
std::string trial_rings(const std::vector<TrialRing>& trials, Amount amount) {
    return listed(trials, "", [&](const TrialRing& trial) {
        return fmt::format(", {} for one trial ring the size of {} with {}", amount(trial), trial.bore,
                           trial.procedure);
    });
}

Need worn_through(NeedKind kind, const FillerUse& use, const Sourced<Time>& life) {
    const double need = std::ceil((use.arc / life.value).value() - 1e-9);
    return by_the_piece(need_of(
        kind, use.filler, use.diameter, {{"t", in_seconds(use.arc)}, {"life", in_seconds(life.value)}},
        {need, "ceil(t/life - 1e-9)", life.source}, spares(1),
        fmt::format("{} of arc, one lasts {}; and one spare", show(use.arc), show(life.value)), life.source));
}

} // namespace

Need wire_need(const FillerUse& use, double reserve, const Packs& packs, const WearParts& wear,
               UnitSystem units) {
    const Sourced<Length>& full = wear.liner_length;
    const Mass liner = use.linear_mass * full.value;
    const std::vector<double> trials =
        each(use.trials, [](const TrialRing& one) { return one.wire.value(); });
    const double on_top = sum(trials, (reserve * use.wire + liner).value());
    Need line = need_of(
        kinds::wire, use.filler, use.diameter,
        {{"n", use.counts},
         {"m", use.each, "kg"},
         {"share", reserve},
         {"mu", in_kg_m(use.linear_mass)},
         {"l", in_metres(full.value)},
         {"m_trial", trials, "kg"}},
        {use.wire.value(), "sum(n*m)", "own"}, {on_top, "share*need + mu*l + sum(m_trial)", full.source},
        fmt::format("{} for the bores: {} laid plus what the arc loses, and {} starts with {} of trim each; "
                    "on top {:.3g} %, {} to fill a liner of {}",
                    show(use.wire, units), show(use.laid, units), use.starts,
                    show(in_si<Length>(trim_a_start), units), 100 * reserve, show(liner, units),
                    show_distance(full.value, units)) +
            trial_rings(use.trials, [&](const TrialRing& trial) { return show(trial.wire, units); }));
    load_best(line, spools_for(use, packs, units), grams, "spool of wire");
    return line;
}

Need piece_need(const FillerUse& use, double reserve, const Packs& packs, UnitSystem units) {
    const auto pieces = [&](const TrialRing& trial) {
        return std::round((trial.wire / use.piece->mass).value());
    };
    const double need = sum_of_products(use.counts, use.each);
    const std::vector<double> trials = each(use.trials, pieces);
    Need line = need_of(
        use.piece->form == FillerForm::rod ? kinds::rod : kinds::electrode, use.filler, use.diameter,
        {{"n", use.counts}, {"k", use.each}, {"share", reserve}, {"k_trial", trials}},
        {need, "sum(n*k)", "own"},
        {sum(trials, std::ceil(reserve * need - 1e-9)), "ceil(share*need - 1e-9) + sum(k_trial)"},
        fmt::format("{} laid; one is {} long and weighs {}, a stub of {} is thrown away, and the rest gives "
                    "{} of weld metal; each bore takes whole ones; on top {:.3g} %{}",
                    show(use.laid, units), show(use.piece->length, units), show(use.piece->mass, units),
                    show(use.piece->stub, units), show(use.piece->usable, units), 100 * reserve,
                    trial_rings(use.trials, pieces)));
    load_best(line, packets_for(use, packs, units), 1, "packet that holds them");
    return line;
}

std::vector<Need> wear_part_needs(const FillerUse& use, const WearParts& wear, UnitSystem units) {
    std::vector<Need> lines{worn_through(kinds::contact_tip, use, wear.tip_life),
                            worn_through(kinds::gas_nozzle, use, wear.nozzle_life)};
    const Sourced<Mass>& life = wear.liner_life;
    if (use.wire > life.value)
        lines.push_back(by_the_piece(need_of(
            kinds::liner, use.filler, use.diameter, {{"m", in_kg(use.wire)}, {"life", in_kg(life.value)}},
            {1, "max(min(floor(m/life), 1), 0)", life.source}, spares(0),
            fmt::format("{} of wire, one lasts {}", show(use.wire, units), show(life.value, units)),
            life.source)));
    return lines;
}

} // namespace ringfill
