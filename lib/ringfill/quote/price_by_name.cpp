#include <ringfill/quote/price_by_name.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace ringfill {
namespace {

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        text.remove_prefix(std::min(text.find_first_not_of(" ,"), text.size()));
        if (text.empty())
            return words;
        const std::size_t end = std::min(text.find_first_of(" ,"), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
}

} // namespace

bool names(std::string_view name, std::string_view text) {
    const auto wanted = words_of(name);
    const auto words = words_of(text);
    return !wanted.empty() &&
           std::search(words.begin(), words.end(), wanted.begin(), wanted.end()) != words.end();
}

const NamedPrices::value_type* price_by_name(const NamedPrices& prices, std::string_view text) {
    const auto weight = [](const NamedPrices::value_type& one) {
        return std::pair(words_of(one.first).size(), one.first.size());
    };
    const NamedPrices::value_type* best = nullptr;
    for (const auto& one : prices)
        if (names(one.first, text) && (!best || weight(one) > weight(*best)))
            best = &one;
    return best;
}

} // namespace ringfill
