#include <ringfill/weld/dilution.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {
namespace {

/// The layer, from 1, that a radius lies in; 0: in none.
int layer_of(const std::vector<Layer>& layers, Length radius) {
    const auto found = std::find_if(layers.begin(), layers.end(), [&](const Layer& layer) {
        return layer.radius_before > radius && radius >= layer.radius_after;
    });
    return found == layers.end() ? 0 : static_cast<int>(found - layers.begin()) + 1;
}

} // namespace

Shares plain_shares(const Composition& composition) {
    Shares shares;
    fill_up(shares, composition);
    return shares;
}

void fill_up(Shares& shares, const Composition& composition) {
    for (const auto& [element, percent] : composition)
        if (!value_named(shares, element))
            shares.emplace_back(element, percent.value);
}

double share_of(const Shares& shares, std::string_view element) {
    const double* found = value_named(shares, element);
    return found ? *found : 0;
}

Shares layer_over(const Shares& under, const Shares& filler, double dilution) {
    Shares layer;
    for (const auto& [element, percent] : under)
        layer.emplace_back(element, dilution * percent + (1 - dilution) * share_of(filler, element));
    for (const auto& [element, percent] : filler)
        if (!value_named(under, element))
            layer.emplace_back(element, (1 - dilution) * percent);
    return layer;
}

double base_left(double dilution, int layer) {
    return std::pow(dilution, layer);
}

int layers_to_reach(double dilution, double limit) {
    return static_cast<int>(std::ceil(std::log10(limit) / std::log10(dilution) - 1e-9));
}

std::optional<Dilution> dilution(const Procedure& procedure, const Filler& filler, const Processes& processes,
                                 const std::vector<Layer>& layers, Length finish_radius) {
    // Where the job does not say, short-circuit transfer counts: it is usual in a ring, and dilutes least.
    const std::string transfer = !is_wire(filler.form)        ? ""
                                 : procedure.transfer.empty() ? "short"
                                                              : procedure.transfer;
    const ProcessRow* row = closest_row(processes, filler.process, transfer, procedure.gas,
                                        [](const ProcessRow& known) { return known.dilution.has_value(); });
    if (!row && !procedure.dilution)
        return std::nullopt;
    Dilution found{.share = procedure.dilution ? Sourced<double>{*procedure.dilution, "job"} : *row->dilution,
                   .range = row ? row->dilution_range : std::nullopt,
                   .limit = processes.base_left};
    found.needed = layers_to_reach(found.share.value, found.limit.value);
    for (std::size_t i = 0; i < layers.size(); ++i)
        found.base_left.push_back(base_left(found.share.value, static_cast<int>(i) + 1));
    found.finish_layer = layer_of(layers, finish_radius);
    return found;
}

} // namespace ringfill
