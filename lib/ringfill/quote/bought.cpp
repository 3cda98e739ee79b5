#include <ringfill/quote/bought.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/quote/price_by_name.hpp>

namespace ringfill {

std::string with_pack(const Need& need, const PackCount& pack) {
    return fmt::format("{}, {}", need.item, pack.pack);
}

std::vector<std::string> bought(const Need& need) {
    std::vector<std::string> names{need.item};
    for (const PackCount& pack : need.cover)
        names.push_back(with_pack(need, pack));
    return names;
}

bool is_bought_by_name(const Need& need, std::string_view name) {
    const auto all = bought(need);
    return std::any_of(all.begin(), all.end(), [&](const std::string& one) { return names(name, one); });
}

bool has_price(const Need& need, const NamedPrices& prices) {
    return std::any_of(prices.begin(), prices.end(),
                       [&](const auto& one) { return is_bought_by_name(need, one.first); });
}

bool is_material(const Need& need, const NamedPrices& prices) {
    return need.charge == Charge::used_up || (need.charge == Charge::tool && has_price(need, prices));
}

std::string substance_of(const Need& need) {
    for (const std::string_view form : {"wire ", "electrodes ", "rods ", "gas ", "fuel "})
        if (need.item.starts_with(form)) {
            const std::string rest = need.item.substr(form.size());
            return rest.substr(0, rest.find(' '));
        }
    return {};
}

} // namespace ringfill
