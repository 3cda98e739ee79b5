#include <ringfill/quote/quote_labour.hpp>

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

namespace ringfill {
namespace {

constexpr Phase phases[] = {Phase::set_up,  Phase::heating, Phase::welding,
                            Phase::waiting, Phase::boring,  Phase::clean_up};

QuoteLine hours_not_known(std::string item, const std::string& why) {
    QuoteLine line;
    line.item = std::move(item);
    line.unit = "h";
    line.missing = fmt::format("hours: no day is laid out, because {}", why);
    return line;
}

bool every_phase_has_a_price(const Prices& prices) {
    return std::all_of(std::begin(phases), std::end(phases), [&](Phase phase) {
        return hour_price(prices, phase_field(phase)).path != "prices.labour_hour";
    });
}

} // namespace

PriceAt hour_price(const Prices& prices, const std::string& field) {
    for (const auto& [name, price] : prices.labour)
        if (name == field)
            return {"prices.labour." + field, price};
    return {"prices.labour_hour", prices.labour_hour};
}

std::vector<QuoteLine> quote_labour(const QuoteFacts& facts, std::vector<Fault>& faults) {
    const PriceAt watch{"prices.watch_hour", facts.prices.watch_hour};
    std::vector<QuoteLine> lines;
    const auto add = [&](QuoteLine line, const PriceAt& at) {
        put_price(line, at, facts.currency, faults);
        lines.push_back(std::move(line));
    };
    if (!facts.hours) {
        QuoteLine work = hours_not_known("work", facts.no_hours);
        if (facts.prices.labour_hour || !every_phase_has_a_price(facts.prices))
            put_price(work, {"prices.labour_hour", facts.prices.labour_hour}, facts.currency, faults);
        lines.push_back(std::move(work));
        add(hours_not_known("fire watch, a second person", facts.no_hours), watch);
        return lines;
    }
    for (const auto& [phase, hours] : facts.hours->work)
        add(line_of(phase_in_words(phase), hours, "h"), hour_price(facts.prices, phase_field(phase)));
    if (facts.hours->test)
        add(line_of("crack test, second visit", *facts.hours->test, "h"),
            hour_price(facts.prices, "testing"));
    add(line_of("fire watch, a second person", facts.hours->watch, "h"), watch);
    return lines;
}

} // namespace ringfill
