#include <ringfill/boring/cuts.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {
namespace {

/// A stock under this is rounding [m].
const Length no_stock = in_si<Length>(1e-12);

/// Sets the cuts on one another from a radius outwards; the last ends on the final radius to the digit.
void set_diameters(std::vector<Cut>& cuts, Length start, Length final_radius) {
    Length radius = start;
    for (Cut& cut : cuts) {
        cut.from = 2.0 * radius;
        radius += cut.depth;
        cut.to = 2.0 * radius;
    }
    for (Cut& cut : cuts)
        if (&cut == &cuts.back() || cut.kind == CutKind::spring || (&cut + 1)->kind == CutKind::spring)
            cut.to = 2.0 * final_radius;
    if (!cuts.empty() && cuts.back().kind == CutKind::spring)
        cuts.back().from = cuts.back().to;
}

int edges_for(Time cutting, Time life) {
    const double count = std::ceil((cutting / life).value() - 1e-9);
    return static_cast<int>(std::clamp<double>(count, 0, most_edges + 1));
}

/// The first cut takes the remainder; one too shallow to get under the skin shares with the second.
void add_rough_cuts(std::vector<Cut>& cuts, Length stock, Length rough_cut, Length least) {
    const int count = rough_cuts(stock, rough_cut);
    const Length remainder = stock - static_cast<double>(count - 1) * rough_cut;
    const bool shares = count > 1 && remainder < least;
    const Length half = (remainder + rough_cut) / 2.0;
    for (int i = 0; i < count; ++i)
        cuts.push_back({i == 0 ? CutKind::skin : CutKind::rough, shares && i < 2 ? half
                                                                 : i == 0        ? remainder
                                                                                 : rough_cut});
}

/// How deep the finish and the semi-finish cut are, each with its share of the stock.
std::pair<Length, Length> last_two_cuts(Length stock, const BarSettings& settings) {
    const Length least = settings.semi_finish_cut.value;
    Length finish = std::min(stock, settings.finish_cut.value);
    Length semi_finish = std::min(Length(stock - finish), least);
    if (!settings.cuts_to_the_end())
        return {finish, semi_finish};
    const Length most = settings.rough_cut.value;
    const Length rest = stock - finish - semi_finish;
    if (semi_finish < least && stock <= most)
        return {stock, Length()};
    if (rest > no_stock && rest < least && semi_finish + rest <= most)
        semi_finish += rest;
    return {finish, semi_finish};
}

} // namespace

int rough_cuts(Length stock, Length rough_cut) {
    if (stock <= no_stock)
        return 0;
    const double count = std::ceil((stock / rough_cut).value() - 1e-9);
    return static_cast<int>(std::clamp<double>(count, 1, most_cuts + 1));
}

std::vector<Cut> skim_cuts(Length smallest_radius, Length skim_radius, Length rough_cut) {
    const Length metal = skim_radius - smallest_radius;
    const int count = rough_cuts(metal, rough_cut);
    std::vector<Cut> cuts(static_cast<std::size_t>(count),
                          {CutKind::skim, metal / static_cast<double>(count)});
    set_diameters(cuts, smallest_radius, skim_radius);
    return cuts;
}

std::vector<Cut> bore_cuts(Length crown_radius, Length final_radius, const BarSettings& settings) {
    const Length stock = final_radius - crown_radius;
    const auto& [finish, semi_finish] = last_two_cuts(stock, settings);
    std::vector<Cut> cuts;
    add_rough_cuts(cuts, stock - finish - semi_finish, settings.rough_cut.value,
                   settings.semi_finish_cut.value);
    if (semi_finish > no_stock)
        cuts.push_back({CutKind::semi_finish, semi_finish});
    cuts.push_back({CutKind::finish, finish});
    if (!settings.cuts_to_the_end())
        cuts.push_back({CutKind::spring});
    set_diameters(cuts, crown_radius, final_radius);
    return cuts;
}

Facing facing(const Face& face, const FacePad& pad, const WornBore& bore, const BarSettings& settings) {
    Facing cut;
    cut.depth = bore.stock + pad.extra_build + pad.bead.valley;
    cut.cuts = rough_cuts(cut.depth, settings.rough_cut.value);
    cut.bar = bar_speed(settings.cutting_speed.value, face.outer + 2.0 * bore.overhang, settings.bar_speeds);
    cut.feed = settings.facing_feed.value;
    const Length way = (face.outer - face.inner) / 2.0 + 2.0 * bore.overhang;
    cut.time = static_cast<double>(cut.cuts) * cutting_time(way, cut.feed, cut.bar.used);
    return cut;
}

std::vector<GrooveCut> groove_cuts(const std::vector<Groove>& grooves, Length finish_radius,
                                   Length finished_weld) {
    std::vector<GrooveCut> cuts;
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        const Length depth = grooves[i].diameter / 2.0 - finish_radius;
        if (depth > Length())
            cuts.push_back({i, depth, finished_weld - depth});
    }
    return cuts;
}

Edges edges(Time rough_time, Time finish_time, Time life) {
    return {edges_for(rough_time, life), std::max(1, edges_for(finish_time, life)), rough_time, finish_time,
            life};
}

Roughness roughness(Length feed, Length nose_radius) {
    const Length height = feed * feed / (8.0 * nose_radius);
    return {height, height / 4.0};
}

} // namespace ringfill
