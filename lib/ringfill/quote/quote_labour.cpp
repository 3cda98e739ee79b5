#include <ringfill/quote/quote_labour.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

QuoteLine hours_not_known(std::string item, const std::string& why) {
    QuoteLine line;
    line.item = std::move(item);
    line.unit = "h";
    line.missing = fmt::format("hours: no day is laid out, because {}", why);
    return line;
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
        const std::string unknown = line.missing;
        put_price(line, at, facts.currency, faults);
        if (!unknown.empty())
            line.missing = unknown;
        lines.push_back(std::move(line));
    };
    if (!facts.hours) {
        add(hours_not_known("work", facts.no_hours), {"prices.labour_hour", facts.prices.labour_hour});
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
