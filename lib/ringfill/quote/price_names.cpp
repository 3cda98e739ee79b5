#include <ringfill/quote/price_names.hpp>

#include <algorithm>
#include <utility>

#include <range/v3/algorithm/any_of.hpp>

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

std::vector<NamePart> called(const Bought& thing, UnitSystem units) {
    std::vector<NamePart> parts = name_parts(thing.need, units);
    if (thing.pack)
        parts.push_back({NamePart::Of::pack, thing.pack->pack});
    return parts;
}

/// A word of what a thing is called, and the part that it belongs to.
struct Word {
    std::string_view text;
    const NamePart* part;
};

/// Whether words in a row cut no substance in two and do not only tell what a thing serves.
bool is_a_name(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    using Of = NamePart::Of;
    const auto cuts = [&](std::size_t inner, std::size_t outer) {
        const NamePart* part = words[inner].part;
        return outer < words.size() && words[outer].part == part &&
               (part->of == Of::substance || part->of == Of::serves);
    };
    if (cuts(first, first - 1) || cuts(last - 1, last))
        return false;
    return std::any_of(words.begin() + static_cast<std::ptrdiff_t>(first),
                       words.begin() + static_cast<std::ptrdiff_t>(last),
                       [](const Word& word) { return word.part->of != Of::serves; });
}

bool name_in(const std::vector<std::string_view>& name, const std::vector<NamePart>& parts) {
    std::vector<Word> words;
    for (const NamePart& part : parts)
        for (const std::string_view word : words_of(part.text))
            words.push_back({word, &part});
    const auto is_same = [](const Word& word, std::string_view wanted) { return word.text == wanted; };
    for (auto at = words.begin(); !name.empty(); ++at) {
        at = std::search(at, words.end(), name.begin(), name.end(), is_same);
        if (at == words.end())
            return false;
        const auto first = static_cast<std::size_t>(at - words.begin());
        if (is_a_name(words, first, first + name.size()))
            return true;
    }
    return false;
}

} // namespace

std::vector<Bought> bought(const Need& need) {
    std::vector<Bought> things;
    for (const PackCount& pack : need.cover)
        things.push_back({need, &pack});
    if (things.empty())
        things.push_back({need});
    return things;
}

std::string full_name(const Bought& thing, UnitSystem units) {
    return item_text(thing.need, units) + (thing.pack ? ", " + thing.pack->pack : "");
}

bool names(std::string_view name, const Bought& thing) {
    const auto wanted = words_of(name);
    return name_in(wanted, called(thing, UnitSystem::metric)) ||
           name_in(wanted, called(thing, UnitSystem::inch));
}

bool names_any_of(std::string_view name, const Need& need) {
    return ranges::any_of(bought(need), [&](const Bought& thing) { return names(name, thing); });
}

const NamedPrice* price_by_name(const NamedPrices& prices, const Bought& thing) {
    const auto weight = [](const NamedPrice& price) {
        return std::pair(words_of(price.first).size(), price.first.size());
    };
    const NamedPrice* best = nullptr;
    for (const NamedPrice& price : prices)
        if (names(price.first, thing) && (!best || weight(price) > weight(*best)))
            best = &price;
    return best;
}

bool is_material(const Need& need, const NamedPrices& prices) {
    const Charge charge = charge_of(need.kind);
    return charge == Charge::used_up ||
           (charge == Charge::tool &&
            ranges::any_of(prices, [&](const NamedPrice& price) { return names_any_of(price.first, need); }));
}

} // namespace ringfill
