#include <ringfill/weld/layer_metal.hpp>

#include <algorithm>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

constexpr double least_chromium = 16; // %, of metal that the estimate was made for [practice]
constexpr double least_nickel = 5;
constexpr double most_manganese = 4;

Shares plain(const Composition& composition) {
    Shares shares;
    for (const auto& [element, percent] : composition)
        shares.emplace_back(element, percent.value);
    return shares;
}

bool is_austenitic(const Shares& metal) {
    return share_of(metal, "Cr") >= least_chromium && share_of(metal, "Ni") >= least_nickel &&
           share_of(metal, "Mn") <= most_manganese;
}

} // namespace

Shares base_shares(const WornBore& bore, const Base& base) {
    Shares shares = plain(base.typical.empty() ? base.composition : base.typical);
    for (const auto& [element, percent] : bore.composition) {
        const auto known = ranges::find(shares, element, [](const auto& one) { return one.first; });
        if (known == shares.end())
            shares.emplace_back(element, percent);
        else
            known->second = percent;
    }
    return shares;
}

std::optional<LayerMetals> layer_metals(const WornBore& bore, const Base& base, const Filler& filler,
                                        const Dilution& dilution) {
    const Shares own = plain(filler.typical);
    if (!is_austenitic(own))
        return std::nullopt;
    LayerMetals found;
    found.base_from = !bore.composition.empty() ? "the mill certificate"
                      : base.typical.empty()    ? "the limits of its standard"
                                                : "what is usual of the grade";
    Shares under = base_shares(bore, base);
    for (std::size_t i = 0; i < std::min(ferrite_layers, dilution.base_left.size()); ++i) {
        under = layer_over(under, own, dilution.share.value);
        found.layers.push_back(under);
    }
    found.wrc = ranges::any_of(own, [](const auto& one) { return one.first == "N"; }) &&
                ranges::all_of(found.layers, in_wrc_1992_range);
    return found;
}

std::vector<Working> dilution_working(const Dilution& dilution, const std::optional<LayerMetals>& metals) {
    const Input share{"D", dilution.share.value};
    std::vector<Working> work{{"share",
                               "d/100",
                               {{"d", 100 * dilution.share.value, "%"}},
                               dilution.share.value,
                               "",
                               dilution.share.source},
                              {"base_left_limit",
                               "x/100",
                               {{"x", 100 * dilution.limit.value, "%"}},
                               dilution.limit.value,
                               "",
                               dilution.limit.source},
                              {"layers_needed",
                               "ceil(log10(x)/log10(D) - 1e-9)",
                               {{"x", dilution.limit.value}, share},
                               static_cast<double>(dilution.needed),
                               "",
                               "own"}};
    if (dilution.range) {
        const auto& [low, high] = dilution.range->value;
        work.push_back({"share_low", "d/100", {{"d", 100 * low, "%"}}, low, "", dilution.range->source});
        work.push_back({"share_high", "d/100", {{"d", 100 * high, "%"}}, high, "", dilution.range->source});
    }
    const auto left = [&](const std::string& path, int layer) {
        return Working{
            path, "D^n", {share, {"n", static_cast<double>(layer)}}, base_left(dilution.share.value, layer),
            "",   "own"};
    };
    if (dilution.finish_layer > 0)
        work.push_back(left("finish.base_left", dilution.finish_layer));
    for (std::size_t i = 0; i < dilution.base_left.size(); ++i) {
        const std::string path = element_path("layers", i);
        work.push_back(left(path + ".base_left", static_cast<int>(i) + 1));
        if (!metals || i >= metals->layers.size())
            continue;
        ranges::push_back(work, under(path, schaeffler_working(metals->layers[i])));
        if (metals->wrc)
            ranges::push_back(work, under(path, wrc_1992_working(metals->layers[i])));
    }
    return under("dilution", std::move(work));
}

} // namespace ringfill
