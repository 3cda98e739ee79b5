#include <ringfill/fault/nearest.hpp>

#include <algorithm>
#include <cctype>
#include <locale>
#include <span>

#include <boost/algorithm/string/case_conv.hpp>
#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_name = 64;

std::string lower(std::string_view text) {
    return boost::algorithm::to_lower_copy(std::string(text), std::locale::classic());
}

/// Optimal string alignment distance: edits and swaps of neighbours that turn a into b.
std::size_t distance(const std::string& a, const std::string& b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = i + j;
                continue;
            }
            const std::size_t differs = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + differs});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

/// Whether a name is the typed one with more behind it, as E7018-H8 is of E7018. A letter or two is no name.
bool goes_on(const std::string& typed, const std::string& name) {
    constexpr std::size_t shortest = 3;
    return typed.size() >= shortest && name.size() > typed.size() && name.starts_with(typed) &&
           !std::isalnum(static_cast<unsigned char>(name[typed.size()]));
}

} // namespace

std::optional<std::string> nearest(std::string_view typed, const std::vector<std::string>& known) {
    if (typed.size() > longest_name)
        return std::nullopt;
    const std::string low = lower(typed);
    for (const std::string& name : known)
        if (goes_on(low, lower(name)))
            return name;
    std::optional<std::string> best;
    // At least one letter must be right.
    std::size_t best_distance = std::min(typed.size(), std::max<std::size_t>(1, typed.size() / 3) + 1);
    for (const std::string& name : known)
        if (const std::size_t d = distance(low, lower(name)); d < best_distance) {
            best = name;
            best_distance = d;
        }
    return best;
}

std::string few_of(const std::vector<std::string>& names, std::size_t most, std::string_view word) {
    const std::string first = listed(std::span(names).first(std::min(names.size(), most)), ", ");
    return names.size() > most ? fmt::format("{} {} {} more", first, word, names.size() - most) : first;
}

std::string suggest(std::string_view typed, const std::vector<std::string>& known) {
    constexpr std::size_t most_named = 40; // more are no help
    if (const auto near = nearest(typed, known))
        return fmt::format("did you mean \"{}\"?", *near);
    return known.empty() ? "none is known here" : "known here: " + few_of(known, most_named);
}

} // namespace ringfill
