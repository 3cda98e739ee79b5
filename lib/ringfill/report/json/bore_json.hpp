#pragma once

#include <ringfill/report/json/boring_json.hpp>
#include <ringfill/report/json/heat_json.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/rows.hpp>

namespace ringfill {

inline auto survey_object(const Survey& survey) {
    return object(member<"largest_radius_mm">(survey.largest.radius),
                  member<"largest_radius_clock_deg">(survey.largest.clock),
                  member<"smallest_radius_mm">(survey.smallest.radius),
                  member<"smallest_radius_clock_deg">(survey.smallest.clock),
                  member<"worn_volume_mm3">(survey.worn_volume));
}

inline auto build_object(const BorePlan& bore) {
    const Build& build = bore.build;
    return object(member<"skim_diameter_mm">(2.0 * build.skim_radius),
                  member<"skim_volume_mm3">(build.skim_volume), member<"wall_mm">(build.wall),
                  member<"weld_to_diameter_mm">(2.0 * build.weld_to_radius),
                  member<"build_mm">(build.thickness), member<"ring_volume_mm3">(build.ring_volume),
                  member<"finished_weld_mm">(build.finished_weld),
                  member<"finished_weld_clock_deg">(when(!build.skimmed, build.finished_weld_clock)),
                  member<"extra_stock_mm">(build.weld_to_radius - bore.layering.end_radius));
}

inline auto bead_object(const Bead& bead) {
    return object(member<"section_mm2">(bead.section), member<"width_mm">(bead.width),
                  member<"crown_mm">(bead.crown), member<"pitch_mm">(bead.pitch),
                  member<"valley_mm">(bead.valley), member<"scale">(bead.scale),
                  member<"travel_mm_min">(bead.travel));
}

inline auto metal_object(const BorePlan& bore) {
    const Metal& metal = bore.metal;
    const bool kept = metal.kept > Mass();
    const bool in_pieces = bore.deposition.piece.has_value();
    return object(member<"laid_kg">(metal.laid), member<"kept_kg">(when(kept, metal.kept)),
                  member<"kept_share">(when(kept, metal.kept_share)),
                  member<"pieces">(when(in_pieces, metal.pieces)),
                  member<"filler_kg">(when(in_pieces, metal.wire)),
                  member<"wire_kg">(when(!in_pieces, metal.wire)), member<"arc_s">(metal.arc),
                  member<"starts">(metal.starts), member<"deposition_kg_h">(bore.deposition.rate));
}

inline auto suits_object(const BorePlan& bore) {
    const auto rule = [&](const Suit& suit) {
        return object(member<"why">(suit.why), member<"buffer">(unless_empty(bore.buffer)),
                      member<"source">(suit.source));
    };
    return object(member<"filler">(bore.filler), member<"base">(bore.base),
                  member<"verdict">(bore.suit ? bore.suit->verdict : Verdict::no_table_says),
                  given(bore.suit, rule));
}

inline auto ferrite_object(const LayerMetals& metals, const Shares& layer) {
    const Equivalents found = schaeffler(layer);
    const Equivalents wrc = wrc_1992(layer);
    return object(member<"cr_eq_pct">(found.chromium), member<"ni_eq_pct">(found.nickel),
                  member<"ferrite_pct">(ferrite(found)),
                  member<"wrc_cr_eq_pct">(when(metals.wrc, wrc.chromium)),
                  member<"wrc_ni_eq_pct">(when(metals.wrc, wrc.nickel)));
}

inline auto dilution_object(const BorePlan& bore, const Dilution& dilution) {
    const auto range = [](const auto& one) {
        return object(member<"share_low">(one.value.first), member<"share_high">(one.value.second));
    };
    const auto finish = [&] {
        return object(member<"layer">(dilution.finish_layer),
                      member<"base_left">(base_left(dilution.share.value, dilution.finish_layer)));
    };
    const auto layer = [&](double left, std::size_t i) {
        const auto& metals = bore.layer_metals;
        return object(member<"layer">(i + 1), member<"base_left">(left),
                      when(metals && i < metals->layers.size(),
                           [&] { return ferrite_object(*metals, metals->layers[i]); }));
    };
    return object(member<"share">(dilution.share), given(dilution.range, range),
                  member<"base_left_limit">(dilution.limit), member<"layers_needed">(dilution.needed),
                  member<"finish">(when(dilution.finish_layer > 0, finish)),
                  member<"layers">(list_of(dilution.base_left, layer)),
                  member<"no_ferrite">(unless_empty(bore.no_ferrite)));
}

inline auto bore_object(const BorePlan& bore) {
    const BoreHeat& heat = bore.heat;
    const auto face = [&](const FacePad& pad, std::size_t i) {
        return face_object(pad, when(heat.bore.has_value(), [&] { return heat.faces[i]; }));
    };
    const auto groove = [&](const GrooveFill& fill, std::size_t i) {
        return groove_object(fill, heat.bore ? heat.grooves[i] : std::nullopt);
    };
    return object(member<"name">(bore.name), member<"count">(bore.count), member<"procedure">(bore.procedure),
                  member<"survey">(survey_object(bore.survey)), member<"build">(build_object(bore)),
                  member<"bead">(bead_object(bore.bead)),
                  member<"layers">(list_of(bore.layers, layer_object)),
                  member<"faces">(unless_empty(list_of(bore.faces, face))),
                  member<"grooves">(unless_empty(list_of(bore.grooves, groove))),
                  member<"metal">(metal_object(bore)), member<"suits">(suits_object(bore)),
                  member<"dilution">(
                      given(bore.dilution, [&](const Dilution& one) { return dilution_object(bore, one); })),
                  member<"heat">(heat_object(bore)),
                  member<"time">(given(
                      bore.heat_balance,
                      [&](const HeatBalance& balance) { return time_object(balance, bore.metal.arc); })),
                  member<"boring">(boring_object(bore)));
}

} // namespace ringfill
