#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/table/packs.hpp>
#include <ringfill/take/cover.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

inline constexpr double grams = 1e3; ///< in a kilogram

/// The packs of a table that stand in the shop, are sold in these units and hold one thing; those of wire
/// name none.
template <class Pack>
std::vector<Pack> sold(const std::vector<Pack>& packs, UnitSystem units, std::string_view holds = {}) {
    std::vector<Pack> found;
    for (const Pack& pack : packs)
        if (pack.stocked && pack.units == units && pack.holds == holds)
            found.push_back(pack);
    return found;
}

/// Cylinders by the litres that may be drawn from them.
std::vector<Offer> cylinders_of(const std::vector<GasPack>& packs);

/// Rounded down, so that nobody counts on what is not there; at least 1.
std::int64_t whole_down(double value);
/// Rounded up; a need past all reason is held at 10^15, where sums stay exact, and refused later.
std::int64_t whole_up(double value);

/// Cylinders that hold the need and give the flow. Where those for the need do not give it: the fewer of
/// those that give it, if they hold the need, and of these with others beside them; of as many the lighter.
Cover enough_for_both(const Cover& for_need, std::int64_t need, std::int64_t flow,
                      const std::vector<Offer>& offers);

/// What cylinders that stand ready together give.
MassFlow steady_draw(const Cover& packs, const std::vector<Offer>& offers);

/// Whether anything is on offer; if not the line says what no table holds, such as "spool of wire".
bool is_offered(Need& line, const std::vector<Offer>& offers, std::string_view what);

/// Need and reserve in whole small units. @param unit small units in one unit of the line.
std::int64_t whole_amount(const Need& line, double unit);

/// The packs of a cover, those that are taken.
std::vector<PackCount> packs_of(const Cover& packs, const std::vector<Offer>& offers);

/// Fills what the packs supply.
void load(Need& line, const Cover& packs, const std::vector<Offer>& offers, double unit);

/// Fills it with the best cover of need and reserve.
/// @param what is said to be in no table where nothing is on offer.
void load_best(Need& line, const std::vector<Offer>& offers, double unit, std::string_view what);

} // namespace ringfill
