#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/day/schedule.hpp>
#include <ringfill/job/prices.hpp>
#include <ringfill/table/currencies.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// The hours of a job, from its day.
struct QuoteHours {
    std::vector<std::pair<Phase, double>> work; ///< h, nights left out; a phase without work has none
    double watch = 0;                           ///< h, of the fire watch
    std::optional<double> test;                 ///< h, of the crack test on a second visit
    int days = 1;                               ///< that are worked on
    double heater_after = 0;                    ///< h, of staying with heaters that slow the cooling
    double looks_after = 0;                     ///< h, of looks from time to time after the fire watch
};

/// What a quote is made from.
struct QuoteFacts {
    const Prices& prices;
    const Currency& currency;
    const std::vector<Need>& take;
    const Packs& packs;
    UnitSystem units = UnitSystem::metric;
    std::optional<QuoteHours> hours;  ///< nothing: there is no day
    std::string no_hours;             ///< why, the end of a sentence
    std::optional<double> energy_kwh; ///< drawn; nothing: not known
};

/// "set_up": the phase as the prices of the job name it.
std::string phase_field(Phase phase);
/// "set-up and checks": the phase in words.
std::string phase_in_words(Phase phase);

} // namespace ringfill
