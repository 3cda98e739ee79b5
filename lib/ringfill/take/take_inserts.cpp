#include <ringfill/take/take_inserts.hpp>

#include <fmt/format.h>

#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

Need edges_of_kind(std::string item, const std::vector<InsertUse>& uses, int Edges::*kind, Time Edges::*time,
                   const char* for_what, const std::string& source) {
    Need line;
    line.item = std::move(item);
    line.unit = "pieces";
    line.reserve = 1;
    std::vector<double> counts;
    std::vector<double> each;
    std::string where;
    for (const InsertUse& use : uses) {
        counts.push_back(use.count);
        each.push_back(use.each.*kind);
        line.need += counts.back() * each.back();
        where += fmt::format("{}{}{} {} ({})", where.empty() ? "" : "; ", use.bore,
                             use.count > 1 ? fmt::format(" × {}, each", use.count) : std::string(),
                             use.each.*kind, show(use.each.*time));
    }
    line.supplied = line.need + line.reserve;
    line.why = fmt::format("{}: {}; one edge lasts {}; and one spare", for_what, where,
                           show(uses.front().each.life));
    line.source = source;
    line.working = {
        {"need", "sum(n*k)", {{"n", counts}, {"k", each, "pieces"}}, line.need, "pieces", source},
        {"reserve", "0*need + 1", {{"need", line.need, "pieces"}}, line.reserve, "pieces", "practice"}};
    work_supply(line, {line.supplied}, {1});
    return line;
}

} // namespace

std::vector<Need> take_inserts(const std::vector<InsertUse>& uses, const std::string& source) {
    if (uses.empty())
        return {};
    return {edges_of_kind("boring edges, rough", uses, &Edges::rough, &Edges::rough_time,
                          "skim, rough and semi-finish cuts", source),
            edges_of_kind("boring edges, finish", uses, &Edges::finish, &Edges::finish_time,
                          "a fresh one for each finish cut and its spring pass", source)};
}

} // namespace ringfill
