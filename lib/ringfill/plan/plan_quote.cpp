#include <ringfill/plan/plan_quote.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/plan/heat_uses.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double joules_in_kwh = 3.6e6;

const Currency* find_currency(const std::string& code, const Shop& shop, std::vector<Fault>& faults) {
    for (const Currency& known : shop.currencies)
        if (known.name == code)
            return &known;
    const auto codes =
        shop.currencies | ranges::views::transform(&Currency::name) | ranges::to<std::vector>();
    const auto near = nearest(code, codes);
    faults.push_back(fault_at_path(
        "prices.currency", in_quotes(code), "is no currency of the table by its code of ISO 4217",
        near ? fmt::format("did you mean \"{}\"?", *near) : fmt::format("write a code such as EUR or USD")));
    return nullptr;
}

QuoteHours hours_of(const Plan& plan) {
    const DayPlan& day = *plan.day;
    QuoteHours hours;
    for (const Phase phase :
         {Phase::set_up, Phase::heating, Phase::welding, Phase::waiting, Phase::boring, Phase::clean_up}) {
        double seconds = 0;
        for (const DayEntry& entry : day.day.entries)
            if (!entry.night && entry.phase == phase)
                seconds += (entry.to - entry.from).value();
        if (seconds > 0)
            hours.work.emplace_back(phase, seconds / factor::hour);
    }
    for (const DayEntry& entry : day.day.entries)
        if (!entry.night)
            hours.days = std::max(hours.days, day_of(entry.from) + 1);
    hours.watch = plan.fire_watch.total.value() / factor::hour;
    if (day.back)
        hours.test = day.back->length.value() / factor::hour;
    for (const BorePlan& bore : plan.bores) // a day has a heat balance of every one
        hours.heater_after += bore.count * slowed_by_heater(*bore.heat_balance).value() / factor::hour;
    for (const WatchPeriod& period : plan.fire_watch.periods)
        hours.looks_after += (period.looked_until - period.until).value() / factor::hour;
    return hours;
}

/// What is drawn, where the arc of every bore is known and so is what an electric heater takes.
std::optional<double> energy_kwh(const std::vector<BorePlan>& bores, const Shop& shop) {
    const auto is_known = [](const BorePlan& bore) {
        const bool electric = bore.heat_balance && bore.heat_balance->heater.fuel.empty();
        return bore.heat.voltage && bore.heat.current && (!electric || bore.heat_balance->cold().is_whole());
    };
    if (!std::all_of(bores.begin(), bores.end(), is_known))
        return std::nullopt;
    return drawn(mains_use(bores, shop.cutting.bar_drive.value)).value() / joules_in_kwh;
}

} // namespace

std::optional<Quote> plan_quote(const Plan& plan, const std::string& no_day, const Job& job, const Shop& shop,
                                std::vector<Fault>& faults) {
    if (!job.prices.currency)
        return std::nullopt;
    const Currency* currency = find_currency(*job.prices.currency, shop, faults);
    if (!currency)
        return std::nullopt;
    const QuoteFacts facts{job.prices, *currency,
                           plan.take,  shop.packs,
                           job.units,  plan.day ? std::optional(hours_of(plan)) : std::nullopt,
                           no_day,     energy_kwh(plan.bores, shop)};
    return quote(facts, faults);
}

} // namespace ringfill
