#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/quote/quote.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double joules_in_kwh = 3.6e6;

const Currency* find_currency(const std::string& code, const std::vector<Currency>& currencies,
                              std::vector<Fault>& faults) {
    const auto found = ranges::find(currencies, code, &Currency::name);
    if (found != currencies.end())
        return &*found;
    const auto codes = currencies | ranges::views::transform(&Currency::name) | ranges::to<std::vector>();
    const auto near = nearest(code, codes);
    faults.push_back(fault_at_path(
        "prices.currency", in_quotes(code), "is no currency of the table by its code of ISO 4217",
        near ? fmt::format("did you mean \"{}\"?", *near) : fmt::format("write a code such as EUR or USD")));
    return nullptr;
}

QuoteHours hours_of(const DayPlan& day, const PlannedWork& work) {
    QuoteHours hours;
    for (const Phase phase :
         {Phase::set_up, Phase::heating, Phase::welding, Phase::waiting, Phase::boring, Phase::clean_up}) {
        double seconds = 0;
        for (const DayEntry& entry : day.day.entries)
            if (!entry.night && entry.kind().phase == phase)
                seconds += (entry.to - entry.from).value();
        if (seconds > 0)
            hours.work.emplace_back(phase, seconds / factor::hour);
    }
    for (const DayEntry& entry : day.day.entries)
        if (!entry.night)
            hours.days = std::max(hours.days, day_of(entry.from) + 1);
    hours.watch = work.fire_watch.total.value() / factor::hour;
    if (day.back)
        hours.test = day.back->length.value() / factor::hour;
    for (const BorePlan& bore : work.bores) // a day has a heat balance of every one
        hours.heater_after += bore.count * slowed_by_heater(*bore.heat_balance).value() / factor::hour;
    for (const WatchPeriod& period : work.fire_watch.periods)
        hours.looks_after += (period.looked_until - period.until).value() / factor::hour;
    return hours;
}

} // namespace

std::optional<Quote> quote(const PlannedWork& work, const Taken& taken, const PlannedDay& day,
                           const std::vector<Currency>& currencies, std::vector<Fault>& faults) {
    const Prices& prices = work.job.prices;
    if (!prices.currency)
        return std::nullopt;
    const Currency* currency = find_currency(*prices.currency, currencies, faults);
    if (!currency)
        return std::nullopt;
    QuoteFacts facts{prices, *currency, taken.needs, work.job.units, {}, day.no_day, {}};
    if (day.day)
        facts.hours = hours_of(*day.day, work);
    if (taken.drawn)
        facts.energy_kwh = taken.drawn->value() / joules_in_kwh;
    return quote(facts, faults);
}

} // namespace ringfill
