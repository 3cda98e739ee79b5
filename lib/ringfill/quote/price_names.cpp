#include <ringfill/quote/price_names.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/units/measure.hpp>

namespace ringfill {
namespace {

/// Sizes that differ by less are one size that was written in two ways, m.
constexpr double same_size_m = 1e-7;

/// Words of a text that must stay as long as they do.
using Words = std::vector<std::string_view>;

Words words_of(std::string_view text) {
    Words words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(" ,"), text.size());
        if (end > 0)
            words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

/// A word of what a thing is called, and the part that it belongs to.
struct Word {
    std::string_view text;
    const NamePart* part;
};

/// Whether words in a row cut no substance in two and do not only tell what a thing serves.
bool is_a_name(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    using Role = NamePart::Role;
    const auto cuts = [&](std::size_t inner, std::size_t outer) {
        const NamePart* part = words[inner].part;
        return outer < words.size() && words[outer].part == part &&
               (part->role == Role::substance || part->role == Role::serves);
    };
    if (cuts(first, first - 1) || cuts(last - 1, last))
        return false;
    return std::any_of(words.begin() + static_cast<std::ptrdiff_t>(first),
                       words.begin() + static_cast<std::ptrdiff_t>(last),
                       [](const Word& word) { return word.part->role != Role::serves; });
}

std::vector<Word> words_of(const std::vector<NamePart>& parts) {
    std::vector<Word> words;
    for (const NamePart& part : parts)
        for (const std::string_view word : words_of(part.text))
            words.push_back({word, &part});
    return words;
}

bool name_in(const Words& name, const std::vector<Word>& words) {
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

/// The size of a thing as a name writes it, number and unit; empty: the name writes no such size.
std::string written_size(const Words& name, const NeedSize& size) {
    const auto* diameter = std::get_if<Length>(&size);
    for (std::size_t i = 1; diameter && i < name.size(); ++i) {
        std::string text = fmt::format("{} {}", name[i - 1], name[i]);
        const auto read = measure(text, Kind::length);
        if (const auto* metres = std::get_if<double>(&read))
            if (std::fabs(*metres - diameter->value()) < same_size_m)
                return text;
    }
    return {};
}

/// Whether a name names a thing, and whether it writes its very size.
enum class Named { no, yes, with_its_size };

/// What a thing is called, part by part and word by word.
struct Called {
    Called(const Bought& thing, UnitSystem units)
        : size(thing.need.size), parts(name_parts(thing.need, units)) {
        if (thing.pack)
            parts.push_back({NamePart::Role::pack, thing.pack->pack});
        words = words_of(parts);
    }

    NeedSize size;
    std::vector<NamePart> parts;
    std::vector<Word> words;
};

Named named(std::string_view name, const Called& called) {
    const Words wanted = words_of(name);
    if (const std::string written = written_size(wanted, called.size); !written.empty()) {
        std::vector<NamePart> as_written = called.parts;
        for (NamePart& part : as_written)
            if (part.role == NamePart::Role::size)
                part.text = written;
        if (name_in(wanted, words_of(as_written)))
            return Named::with_its_size;
    }
    return name_in(wanted, called.words) ? Named::yes : Named::no;
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

bool names_any_of(std::string_view name, const Need& need, UnitSystem units) {
    return ranges::any_of(
        bought(need), [&](const Bought& thing) { return named(name, Called(thing, units)) != Named::no; });
}

const NamedPrice* price_by_name(const NamedPrices& prices, const Bought& thing, UnitSystem units) {
    const Called called(thing, units);
    const NamedPrice* best = nullptr;
    std::tuple<std::size_t, Named, std::size_t> most;
    for (const NamedPrice& price : prices) {
        const auto& name = price.first;
        const std::tuple weight{words_of(name).size(), named(name, called), name.size()};
        if (std::get<Named>(weight) != Named::no && (!best || weight > most))
            std::tie(best, most) = std::tuple{&price, weight};
    }
    return best;
}

bool is_material(const Need& need, const NamedPrices& prices, UnitSystem units) {
    const Charge charge = need.kind.charge;
    return charge == Charge::used_up ||
           (charge == Charge::tool && ranges::any_of(prices, [&](const NamedPrice& price) {
                return names_any_of(price.first, need, units);
            }));
}

} // namespace ringfill
