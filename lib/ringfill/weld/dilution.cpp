#include <ringfill/weld/dilution.hpp>

#include <cmath>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

int layer_of(const std::vector<Layer>& layers, Length radius) {
    for (std::size_t i = 0; i < layers.size(); ++i)
        if (layers[i].radius_before > radius && radius >= layers[i].radius_after)
            return static_cast<int>(i) + 1;
    return 0;
}

} // namespace

double share_of(const Shares& shares, std::string_view element) {
    const auto found =
        ranges::find(shares, element, [](const auto& one) { return std::string_view(one.first); });
    return found == shares.end() ? 0 : found->second;
}

Shares layer_over(const Shares& under, const Shares& filler, double dilution) {
    Shares layer;
    for (const auto& [element, percent] : under)
        layer.emplace_back(element, dilution * percent + (1 - dilution) * share_of(filler, element));
    for (const auto& [element, percent] : filler)
        if (ranges::find(under, element, [](const auto& one) { return one.first; }) == under.end())
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
    const ProcessRow* row = dilution_row(
        processes, filler.process, is_wire(filler.form) ? procedure.transfer : std::string(), procedure.gas);
    if (!row && !procedure.dilution)
        return std::nullopt;
    Dilution found;
    found.share = procedure.dilution ? Sourced<double>{*procedure.dilution, "job"} : *row->dilution;
    if (row)
        found.range = row->dilution_range;
    found.limit = processes.base_left;
    found.needed = layers_to_reach(found.share.value, found.limit.value);
    for (std::size_t i = 0; i < layers.size(); ++i)
        found.base_left.push_back(base_left(found.share.value, static_cast<int>(i) + 1));
    found.finish_layer = layer_of(layers, finish_radius);
    return found;
}

} // namespace ringfill
