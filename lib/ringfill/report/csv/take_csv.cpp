#include <ringfill/report/csv/take_csv.hpp>

#include <fmt/format.h>

#include <ringfill/report/csv/csv.hpp>

namespace ringfill {
namespace {

std::string packs(const Need& line) {
    std::string text;
    for (const PackCount& pack : line.cover)
        text += fmt::format("{}{} x {}", text.empty() ? "" : " + ", pack.count, pack.pack);
    return text;
}

} // namespace

std::string take_csv(const Plan& plan) {
    std::vector<std::vector<Cell>> rows{
        {"item", "need", "reserve", "unit", "load", "supplied", "spare", "why", "source"}};
    for (const Need& line : plan.take)
        rows.push_back({item_text(line, plan.units), line.need, line.reserve, unit_text(unit_of(line.kind)),
                        packs(line), line.supplied, line.spare, line.why, line.source});
    return csv(rows);
}

} // namespace ringfill
