#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/quote/quote.hpp>

namespace ringfill {

// The sections of a quote, each noting the faults of its prices, and the notes on what is in none.

/// A share that a job may put on top of the sum.
struct ShareOnTop {
    const char* name;
    const char* path;
    std::optional<ExactShare> Prices::*share;
};
inline constexpr ShareOnTop shares_on_top[] = {{"contingency", "prices.contingency", &Prices::contingency},
                                               {"mark-up", "prices.markup", &Prices::markup},
                                               {"tax", "prices.tax", &Prices::tax}};

/// The lines of what is used up, and of each tool that has a price of its own, counted twice: whole packs, as
/// they are bought, and of their cost the share that is used, without the reserve. A pack's price is the one
/// its name has, else that of a kilogram of its filler.
std::pair<std::vector<QuoteLine>, std::vector<QuoteLine>> quote_materials(const QuoteFacts& facts,
                                                                          std::vector<Fault>& faults);

/// Hours by phase, of the crack test on a second visit, and of the fire watch. Without a day the hours are
/// missing, and said to be.
std::vector<QuoteLine> quote_labour(const QuoteFacts& facts, std::vector<Fault>& faults);

/// The energy of arc, electric heater and boring bar from the mains, or the fuel of a generator where the job
/// gives the price of that.
std::vector<QuoteLine> quote_power(const QuoteFacts& facts, std::vector<Fault>& faults);

/// How often somebody drives there and back: as the job says, or once for each day worked and once for the
/// crack test. Nothing: neither is known.
std::optional<int> trips_of(const QuoteFacts& facts);

/// The way and the time on the road of all trips. Where the job gives no prices.travel, that is missing, and
/// so is the one of way and time that has a price of its own but is not given; a job at home says 0 km, which
/// needs no price.
std::vector<QuoteLine> quote_travel(const QuoteFacts& facts, std::vector<Fault>& faults);

/// What of the journey is in no line, though nothing asks for it.
std::vector<std::string> travel_notes(const Prices& prices);

/// How the sums are made, what is in no line, and what the names of prices.packs do that was most likely not
/// meant: name nothing that is taken, name what is priced elsewhere, or price more than one filler, gas or
/// fuel.
std::vector<std::string> quote_notes(const QuoteFacts& facts);

} // namespace ringfill
