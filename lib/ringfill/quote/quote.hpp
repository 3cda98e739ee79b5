#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/caution/planned_work.hpp>
#include <ringfill/day/day_plan.hpp>
#include <ringfill/document/word_of.hpp>
#include <ringfill/job/prices.hpp>
#include <ringfill/quote/quote_line.hpp>
#include <ringfill/take/take.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// The hours of a job, from its day.
struct QuoteHours {
    std::vector<std::pair<Phase, double>> work; ///< h on site by day; a phase without any has none
    double watch = 0;                           ///< h, of the fire watch
    std::optional<double> test;                 ///< h, of the crack test on a second visit
    int days = 1;                               ///< that somebody works or waits on
    Time heater_after = {};                     ///< of staying with heaters that slow the cooling
    Time looks_after = {};                      ///< of looks from time to time after the fire watch
    double idle = 0;                            ///< h by day, with nobody there until a morning
};

/// What a quote is made from.
struct QuoteFacts {
    const Prices& prices;
    const Currency& currency;
    const std::vector<Need>& take;
    UnitSystem units = UnitSystem::metric;
    std::optional<QuoteHours> hours;  ///< nothing: there is no day
    std::string no_hours;             ///< why, the end of a sentence
    std::optional<double> energy_kwh; ///< drawn; nothing: not known
};

/// What the lines of a quote are gathered by.
enum class QuotePart { packs, use, labour, power, travel, extras };

template <>
inline constexpr std::string_view enum_words<QuotePart>[] = {
    "materials by pack", "materials by use", "labour", "power", "travel", "extras"};

struct QuoteSection {
    QuotePart part = QuotePart::packs;
    std::vector<QuoteLine> lines;
    bool counts = true;       ///< of packs and use only one does
    std::optional<Minor> sum; ///< of the amounts that are known; nothing: none is
};

/// A share put on top of what stands before it.
struct OnTop {
    std::string name; ///< contingency, mark-up, tax
    ExactShare share = 0;
    Minor before = 0; ///< what it is a share of
    Minor amount = 0;
};

/// What a job costs. The total is the sum of its lines as printed, in the smallest unit of the currency.
struct Quote {
    Currency currency;
    std::vector<QuoteSection> sections = {};
    std::optional<Minor> subtotal = {}; ///< of the sections that count; nothing: no amount is known
    std::vector<OnTop> on_top = {};
    std::optional<Minor> total = {};
    bool taxed = false;
    std::vector<std::string> missing =
        {}; ///< what keeps it from being whole, line by line; of those that count
    std::vector<std::string> notes = {};

    bool is_whole() const { return missing.empty(); }
};

/// The quote of a job. Noted: prices that cannot be counted exactly in this currency, and amounts too large.
Quote quote_from(const QuoteFacts& facts, std::vector<Fault>& faults);

/// The quote of planned work; nothing when the job gives no currency, or one that the table does not have,
/// which is noted.
std::optional<Quote> quote(const PlannedWork& work, const Taken& taken, const PlannedDay& day,
                           const std::vector<Currency>& currencies, std::vector<Fault>& faults);

/// How every figure of a quote was reached, under "quote".
std::vector<Working> quote_working(const Quote& quote);

} // namespace ringfill
