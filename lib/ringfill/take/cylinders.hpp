#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <ringfill/take/cover.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// One kind of cylinder on offer, in whole small units: grams or litres, and grams an hour.
struct Offer {
    std::string name;
    std::int64_t content;
    std::int64_t draw;
};

/// Rounded down, so that nobody counts on what is not there; at least 1.
std::int64_t whole_down(double value);
std::int64_t whole_up(double value);

/// The cover of a need by one figure of the cylinders; supplied is their content.
Cover cover_by(std::int64_t need, const std::vector<Offer>& offers, std::int64_t Offer::*figure);

/// Cylinders that hold the need and give the flow. Where those for the need do not give it: the fewer of
/// those that give it, if they hold the need, and of these with others beside them; of as many the lighter.
Cover enough_for_both(const Cover& for_need, std::int64_t need, std::int64_t flow,
                      const std::vector<Offer>& offers);

/// What cylinders that stand ready together give.
MassFlow steady_draw(const Cover& packs, const std::vector<Offer>& offers);

/// "3 × 11 kg propane cylinder + 1 × 5 kg propane cylinder"
std::string cylinders_in_words(const Cover& packs, const std::vector<Offer>& offers);

/// Fills what the packs supply. @param unit small units of a cylinder in one unit of the line.
void load_cylinders(Need& line, const Cover& packs, const std::vector<Offer>& offers, double unit);

} // namespace ringfill
