#pragma once

#include <optional>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/say/quote_words.hpp>

namespace ringfill {

// Parts of the result that are rows of a table too.

/// What a layer, a face and a groove have alike.
auto laid_members(const auto& part) {
    return object(member<"path_mm">(part.path), member<"laid_kg">(part.laid), member<"arc_s">(part.arc));
}

inline auto layer_object(const Layer& layer, std::size_t i) {
    return object(member<"layer">(i + 1), member<"radius_before_mm">(layer.radius_before),
                  member<"radius_after_mm">(layer.radius_after), member<"rings">(layer.rings),
                  laid_members(layer), member<"torch_rpm">(layer.torch));
}

/// @param heat_input as laid, where it is known.
inline auto face_object(const FacePad& face, const std::optional<EnergyPerLength>& heat_input) {
    return object(member<"layers">(face.layers), member<"rings">(face.rings),
                  member<"scale">(face.bead.scale), member<"extra_build_mm">(face.extra_build),
                  member<"pitch_mm">(face.bead.pitch), member<"travel_mm_min">(face.bead.travel),
                  member<"torch_first_rpm">(face.first_torch()), member<"torch_last_rpm">(face.last_torch()),
                  laid_members(face), member<"heat_input_kj_mm">(heat_input));
}

inline auto groove_object(const GrooveFill& groove, const std::optional<EnergyPerLength>& heat_input) {
    const bool filled = groove.volume > Volume();
    return object(member<"volume_mm3">(groove.volume), laid_members(groove),
                  member<"travel_mm_min">(when(filled, groove.travel)),
                  member<"torch_rpm">(when(filled, groove.torch)), member<"heat_input_kj_mm">(heat_input));
}

inline auto cut_object(const Cut& cut, const BoringPlan& boring) {
    return object(member<"kind">(cut.kind), member<"depth_mm">(cut.depth),
                  member<"diameter_from_mm">(cut.from), member<"diameter_to_mm">(cut.to),
                  member<"rpm">(cut.bar.used), member<"feed_mm">(boring.settings.feed.value),
                  member<"time_s">(cut.time));
}

inline auto facing_object(const Facing& face) {
    return object(member<"depth_mm">(face.depth), member<"cuts">(face.cuts), member<"rpm">(face.bar.used),
                  member<"feed_mm">(face.feed), member<"time_s">(face.time));
}

inline auto standing_object(const Standing& step) {
    return object(member<"step">(step.step), member<"count">(step.count), member<"time_s">(step.time()),
                  member<"low_s">(static_cast<double>(step.count) * step.each.range.value.first),
                  member<"high_s">(static_cast<double>(step.count) * step.each.range.value.second));
}

/// A line of what to take.
inline auto need_object(const Need& need, UnitSystem units) {
    const auto pack = [](const PackCount& one) {
        return object(member<"pack">(one.pack), member<"count">(one.count));
    };
    return object(member<"item">(item_text(need, units)), member<"need">(when(!is_unknown(need), need.need)),
                  member<"reserve">(when(!is_unknown(need), need.reserve)),
                  member<"unknown">(unless_empty(need.unknown)), member<"unit">(need.kind.unit),
                  member<"cover">(list_of(need.cover, pack)),
                  member<"supplied">(when(need.pack_known, need.supplied)),
                  member<"spare">(when(need.pack_known, need.spare)), member<"why">(need.why),
                  member<"source">(need.source), member<"id">(need_id(need)));
}

/// A line of the quote. What is missing is said and has no amount.
inline auto line_object(const QuoteLine& line, int exponent) {
    const auto money = [&](Minor amount) { return money_text(amount, exponent); };
    const auto price = [&](const Decimal& decimal) { return decimal_text(decimal, exponent); };
    return object(member<"item">(line.item), member<"quantity">(given(line.quantity, in_units)),
                  member<"unit">(unless_empty(line.unit)),
                  member<"of">(given(line.part ? line.part->supplied : std::nullopt, in_units)),
                  member<"price">(given(line.price, price)), member<"amount_minor">(line.amount),
                  member<"amount">(given(line.amount, money)),
                  member<"missing">(when(!line.amount, line.missing)));
}

} // namespace ringfill
