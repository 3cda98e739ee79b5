#include <ringfill/quote/quote.hpp>

#include <map>
#include <set>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/quote/quote_sections.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double joules_in_kwh = 3.6e6;

Fault no_currency(const std::string& code, const std::vector<Currency>& currencies) {
    const auto near =
        nearest(code, currencies | ranges::views::transform(&Currency::name) | ranges::to<std::vector>());
    return fault_at_path(
        "prices.currency", in_quotes(code), "is no currency of the table by its code of ISO 4217",
        near ? fmt::format("did you mean \"{}\"?", *near) : "write a code such as EUR or USD");
}

QuoteHours hours_of(const DayPlan& day, const PlannedWork& work) {
    QuoteHours hours;
    hours.idle = day.idle.value() / factor::hour;
    std::map<Phase, double> seconds;
    std::set<int> days;
    for (const DayEntry& entry : day.day.entries)
        if (is_work(entry.phase) || entry.phase == Phase::waiting) {
            seconds[entry.phase] += (entry.to - entry.from).value();
            days.insert(day_of(entry.from));
        }
    hours.days = static_cast<int>(days.size());
    for (const auto& [phase, of_phase] : seconds)
        if (of_phase > 0)
            hours.work.emplace_back(phase, of_phase / factor::hour);
    hours.watch = work.fire_watch.total.value() / factor::hour;
    if (day.back)
        hours.test = day.back->length.value() / factor::hour;
    for (const BorePlan& bore : work.bores) // a day has a heat balance of every one
        hours.heater_after += static_cast<double>(bore.count) * slowed_by_heater(*bore.heat_balance);
    for (const WatchPeriod& period : work.fire_watch.periods)
        hours.looks_after += period.looked_until - period.until;
    return hours;
}

/// Sum of the sections that count, then one share after the other on all that stands before it.
void add_up(Quote& quote, const Prices& prices, std::vector<Fault>& faults) {
    std::vector<Minor> sums;
    for (const QuoteSection& section : quote.sections)
        if (section.counts && section.sum)
            sums.push_back(*section.sum);
    if (sums.empty())
        return;
    quote.subtotal = sum_of(sums);
    quote.total = quote.subtotal;
    if (!quote.total)
        add_fault(faults, too_large("prices", "the sum"));
    for (const auto& [name, path, member] : shares_on_top) {
        const auto& share = prices.*member;
        if (!quote.total || !share)
            continue;
        const auto [parts, whole] = lowest_terms(*share, whole_share);
        const auto amount = half_even(*quote.total, parts, whole);
        quote.on_top.push_back({name, *share, *quote.total, amount.value_or(0)});
        quote.total = amount ? sum_of({*quote.total, *amount}) : std::nullopt;
        if (!quote.total)
            add_fault(faults, too_large(path));
    }
    quote.taxed = prices.tax.has_value();
}

} // namespace

Quote quote_from(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const Prices& prices = facts.prices;
    Quote result{.currency = facts.currency};
    const auto add = [&](QuotePart part, std::vector<QuoteLine> lines, bool counts = true) {
        std::vector<Minor> amounts;
        for (const QuoteLine& line : lines)
            if (line.amount)
                amounts.push_back(*line.amount);
            else if (counts)
                result.missing.push_back(fmt::format("{}: {}", line.item, line.missing));
        const auto sum = amounts.empty() ? std::nullopt : sum_of(amounts);
        if (!amounts.empty() && !sum)
            add_fault(faults, too_large("prices", fmt::format("the sum of {}", word_of(part))));
        if (!lines.empty())
            result.sections.push_back({part, std::move(lines), counts, sum});
    };
    auto [packs, use] = quote_materials(facts, faults);
    add(QuotePart::packs, std::move(packs), !prices.by_use);
    add(QuotePart::use, std::move(use), prices.by_use);
    add(QuotePart::labour, quote_labour(facts, faults));
    add(QuotePart::power, quote_power(facts, faults));
    add(QuotePart::travel, quote_travel(facts, faults));
    std::vector<QuoteLine> extras;
    for (const auto& [name, price] : prices.extras)
        extras.push_back(priced(line_of(name, 1, ""), {member_path("prices.extras", name), price},
                                facts.currency, faults));
    add(QuotePart::extras, std::move(extras));
    add_up(result, prices, faults);
    result.notes = quote_notes(facts);
    return result;
}

std::optional<Quote> quote(const PlannedWork& work, const Taken& taken, const PlannedDay& day,
                           const std::vector<Currency>& currencies, std::vector<Fault>& faults) {
    const Prices& prices = work.job.prices;
    if (!prices.currency)
        return std::nullopt;
    const auto currency = ranges::find(currencies, *prices.currency, &Currency::name);
    if (currency == currencies.end()) {
        faults.push_back(no_currency(*prices.currency, currencies));
        return std::nullopt;
    }
    QuoteFacts facts{prices, *currency, taken.needs, work.job.units, {}, day.no_day, {}};
    if (day.day)
        facts.hours = hours_of(*day.day, work);
    if (taken.drawn)
        facts.energy_kwh = taken.drawn->value() / joules_in_kwh;
    return quote_from(facts, faults);
}

} // namespace ringfill
