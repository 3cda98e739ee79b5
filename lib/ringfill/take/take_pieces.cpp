#include <ringfill/take/take_pieces.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/take/cover.hpp>

namespace ringfill {
namespace {

/// How many whole ones a packet holds; 0: it is too small for one.
double pieces_in(const PiecePack& pack, Mass each) {
    return std::floor((pack.content.value / each).value() + 1e-9);
}

std::vector<const PiecePack*> packs_for(const PieceUse& use, const Packs& packs, UnitSystem units) {
    std::vector<const PiecePack*> offered;
    for (const PiecePack& pack : packs.pieces)
        if (pack.stocked && pack.units == units && (pack.holds == "rods") == use.rods &&
            pieces_in(pack, use.each) >= 1)
            offered.push_back(&pack);
    return offered;
}

void cover_with(Need& line, const PieceUse& use, const std::vector<const PiecePack*>& offered) {
    if (offered.empty()) {
        line.why += "; no packet that holds them is in the table of packs";
        line.pack_known = false;
        return;
    }
    std::vector<PackSize> sizes;
    for (const PiecePack* pack : offered) {
        PackSize size{std::llround(pieces_in(*pack, use.each)), std::nullopt};
        if (use.price_kg)
            size.price = pack_price(*use.price_kg * pack->content.value.value());
        sizes.push_back(size);
    }
    const double all = line.need + line.reserve;
    const Cover best = cover(whole_need(all, 0.5), sizes);
    std::vector<double> counts;
    std::vector<double> contents;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        counts.push_back(static_cast<double>(best.counts[i]));
        contents.push_back(static_cast<double>(sizes[i].content));
        if (best.counts[i] > 0)
            line.cover.push_back({offered[i]->name, best.counts[i]});
    }
    line.supplied = static_cast<double>(best.supplied);
    line.spare = line.supplied - all;
    work_supply(line, std::move(counts), std::move(contents));
}

std::string why(const PieceUse& use, double reserve, UnitSystem units) {
    std::string text = fmt::format(
        "{} laid; one is {} long and weighs {}, a stub of {} is thrown away, and the rest gives {} of weld "
        "metal; each bore takes whole ones; on top {:.3g} %",
        show(use.laid, units), show(use.length, units), show(use.each, units), show(use.stub, units),
        show(use.usable, units), 100 * reserve);
    for (const TrialRing& trial : use.trials)
        text += fmt::format(", {:.0f} for one trial ring the size of {} with {}",
                            (trial.wire / use.each).value(), trial.bore, trial.procedure);
    return text;
}

} // namespace

Need take_pieces(const PieceUse& use, double reserve, const Packs& packs, UnitSystem units) {
    double need = 0;
    for (std::size_t i = 0; i < use.counts.size(); ++i)
        need += use.counts[i] * use.pieces_each[i];
    std::vector<double> trials;
    double trial_pieces = 0;
    for (const TrialRing& trial : use.trials) {
        trials.push_back(std::round((trial.wire / use.each).value()));
        trial_pieces += trials.back();
    }
    Need line;
    line.item =
        fmt::format("{} {} {}", use.rods ? "rods" : "electrodes", use.filler, show_wire(use.diameter, units));
    line.need = need;
    line.reserve = std::ceil(reserve * need - 1e-9) + trial_pieces;
    line.unit = "pieces";
    line.why = why(use, reserve, units);
    line.source = "practice";
    line.working = {
        {"need", "sum(n*k)", {{"n", use.counts}, {"k", use.pieces_each}}, line.need, "pieces", "own"},
        {"reserve",
         "ceil(share*need - 1e-9) + sum(k_trial)",
         {{"share", reserve}, {"need", line.need, "pieces"}, {"k_trial", trials}},
         line.reserve,
         "pieces",
         "practice"}};
    cover_with(line, use, packs_for(use, packs, units));
    return line;
}

} // namespace ringfill
