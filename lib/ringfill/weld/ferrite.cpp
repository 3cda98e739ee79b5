#include <ringfill/weld/ferrite.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

constexpr double least_chromium = 16; // %, of metal that the estimate was made for [practice]
constexpr double least_nickel = 5;
constexpr double most_manganese = 4;
constexpr double most_copper = 5; // of the base metal; the equivalents have no term for more

bool is_chromium_nickel(const Shares& metal) {
    return share_of(metal, "Cr") >= least_chromium && share_of(metal, "Ni") >= least_nickel;
}

/// Where the shares of the base metal come from, for people.
std::string source_of_shares(const WornBore& bore, const Base& base) {
    std::string listed = base.typical.empty() ? "the limits of its standard" : "what is usual of the grade";
    if (bore.composition.empty())
        return listed;
    const bool whole = ranges::all_of(base_shares({}, base), [&](const auto& listed_share) {
        return value_named(bore.composition, listed_share.first);
    });
    return whole ? "the mill certificate" : "the mill certificate in part, the rest by " + listed;
}

/// How the equivalents of a layer and its ferrite were reached, under their names in the result.
std::vector<Working> equivalents_working(const Shares& metal, bool with_wrc) {
    const Equivalents found = schaeffler(metal);
    const Equivalents wrc = wrc_1992(metal);
    std::vector<Input> inputs{{"Cr_eq", found.chromium, "%"}, {"Ni_eq", found.nickel, "%"}};
    for (const char* element : {"Cr", "Ni", "Mo", "Si", "Nb", "C", "Mn", "N", "Cu"})
        inputs.emplace_back(element, share_of(metal, element), "%");
    return worked(
        inputs,
        {{"cr_eq_pct", "Cr + Mo + 1.5*Si + 0.5*Nb", {found.chromium, "%"}, "Schaeffler"},
         {"ni_eq_pct", "Ni + 30*C + 0.5*Mn", {found.nickel, "%"}, "Schaeffler"},
         {"ferrite_pct", "max(0, 3*(Cr_eq - 0.93*Ni_eq - 6.7))", {ferrite(found), "%"}, "Seferian-ferrite"},
         {"wrc_cr_eq_pct", with_wrc ? "Cr + Mo + 0.7*Nb" : "", {wrc.chromium, "%"}, "WRC-1992"},
         {"wrc_ni_eq_pct", with_wrc ? "Ni + 35*C + 20*N + 0.25*Cu" : "", {wrc.nickel, "%"}, "WRC-1992"}});
}

} // namespace

Equivalents schaeffler(const Shares& metal) {
    const auto of = [&](std::string_view element) { return share_of(metal, element); };
    return {of("Cr") + of("Mo") + 1.5 * of("Si") + 0.5 * of("Nb"), of("Ni") + 30 * of("C") + 0.5 * of("Mn")};
}

double ferrite(const Equivalents& equivalents) {
    return std::max(0.0, 3 * (equivalents.chromium - 0.93 * equivalents.nickel - 6.7));
}

Equivalents wrc_1992(const Shares& metal) {
    const auto of = [&](std::string_view element) { return share_of(metal, element); };
    return {of("Cr") + of("Mo") + 0.7 * of("Nb"), of("Ni") + 35 * of("C") + 20 * of("N") + 0.25 * of("Cu")};
}

bool in_wrc_1992_range(const Shares& metal) {
    return share_of(metal, "Mn") <= 10 && share_of(metal, "Mo") <= 3 && share_of(metal, "N") <= 0.2 &&
           share_of(metal, "Si") <= 1;
}

Shares base_shares(const WornBore& bore, const Base& base) {
    Shares shares = bore.composition;
    fill_up(shares, base.typical.empty() ? base.composition : base.typical);
    fill_up(shares, base.composition_min);
    return shares;
}

std::string no_ferrite(const WornBore& bore, const Base& base, const Filler& filler) {
    const Shares own = plain_shares(filler.typical);
    if (filler.typical.empty() && is_chromium_nickel(plain_shares(filler.composition)))
        return "the tables know the limits of " + filler.name + ", not its usual metal";
    if (!is_chromium_nickel(own))
        return {};
    if (const double manganese = share_of(own, "Mn"); manganese > most_manganese)
        return fmt::format("the estimate was made for metal with up to {} % of manganese, and {} has {}",
                           most_manganese, filler.name, manganese);
    const Shares under = base_shares(bore, base);
    if (base.structure == "copper" || share_of(under, "Cu") > most_copper)
        return fmt::format("the estimate knows no layer with much copper in it, and {} brings it", base.name);
    const std::vector<const char*> needed{"C", "Mn"};
    for (const char* element : base.structure == "nickel" ? std::vector{"Ni"} : needed)
        if (!value_named(under, element))
            return fmt::format("nothing here says how much {} is in {}; its mill certificate would", element,
                               base.name);
    return {};
}

std::optional<LayerMetals> layer_metals(const WornBore& bore, const Base& base, const Filler& filler,
                                        const Dilution& dilution) {
    const Shares own = plain_shares(filler.typical);
    if (!is_chromium_nickel(own) || !no_ferrite(bore, base, filler).empty())
        return std::nullopt;
    LayerMetals found;
    found.base_from = source_of_shares(bore, base);
    Shares under = base_shares(bore, base);
    for (std::size_t i = 0; i < std::min(ferrite_layers, dilution.base_left.size()); ++i) {
        under = layer_over(under, own, dilution.share.value);
        found.layers.push_back(under);
    }
    found.wrc = value_named(own, "N") && ranges::all_of(found.layers, in_wrc_1992_range);
    return found;
}

std::vector<Working> dilution_working(const Dilution& dilution, const std::optional<LayerMetals>& metals) {
    const Input share{"D", dilution.share.value};
    const auto from_percent = [](std::string figure, const char* symbol, double value,
                                 const std::string& source) {
        return worked(std::move(figure), fmt::format("{}/100", symbol), {{symbol, 100 * value, "%"}}, value,
                      source);
    };
    const auto left = [&](const std::string& path, int layer) {
        return worked(path, "D^n", {share, {"n", layer}}, base_left(dilution.share.value, layer));
    };
    std::vector<Working> work{
        from_percent("share", "d", dilution.share.value, dilution.share.source),
        from_percent("base_left_limit", "x", dilution.limit.value, dilution.limit.source),
        worked("layers_needed", "ceil(log10(x)/log10(D) - 1e-9)", {{"x", dilution.limit.value}, share},
               dilution.needed)};
    if (const auto& range = dilution.range)
        append(work, {from_percent("share_low", "d", range->value.first, range->source),
                      from_percent("share_high", "d", range->value.second, range->source)});
    if (dilution.finish_layer > 0)
        work.push_back(left("finish.base_left", dilution.finish_layer));
    for (std::size_t i = 0; i < dilution.base_left.size(); ++i) {
        const std::string path = element_path("layers", i);
        work.push_back(left(path + ".base_left", static_cast<int>(i) + 1));
        if (metals && i < metals->layers.size())
            append(work, under(path, equivalents_working(metals->layers[i], metals->wrc)));
    }
    return under("dilution", std::move(work));
}

} // namespace ringfill
