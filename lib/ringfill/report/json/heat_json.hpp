#pragma once

#include <algorithm>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/working_json.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {

inline auto method_object(const PreheatMethod& method) {
    return object(member<"name">(method.name), member<"asks">(method.asks),
                  member<"minimum_degC">(method.minimum), member<"applies">(method.applies),
                  member<"rules">(method.rules), member<"in_range">(method.in_range),
                  member<"formula">(unless_empty(method.formula)),
                  member<"inputs">(when(!method.inputs.empty(), Inputs{method.inputs})),
                  member<"note">(unless_empty(method.note)), member<"source">(method.source));
}

inline auto later_object(const LaterLayers& later) {
    return object(member<"min_degC">(later.minimum.value), member<"max_degC">(later.maximum.value));
}

inline auto lowering_object(const Lowering& one) {
    return object(member<"by">(one.by), member<"K">(one.kelvin));
}

inline auto treatment_object(const HeatTreatment& one) {
    return object(member<"document">(one.document), member<"edition">(one.edition),
                  member<"low_degC">(celsius(one.degC.first)), member<"high_degC">(celsius(one.degC.second)),
                  member<"min_per_25mm">(one.min_per_25mm), member<"at_least_min">(one.at_least_min),
                  member<"source">(one.source));
}

/// Figures to act on stand only where there are some: not while the work is stopped.
inline auto preheat_members(const Preheat& preheat) {
    const bool acts = preheat.state == PreheatState::figure || preheat.state == PreheatState::none;
    const auto minimum = acts ? preheat.minimum : std::nullopt;
    const auto maximum = acts ? preheat.interpass_max : std::nullopt;
    const auto later = acts ? preheat.later : std::nullopt;
    return object(member<"state">(preheat.state),
                  member<"preheat_min_degC">(given(minimum, &AskedTemperature::value)),
                  member<"preheat_by">(given(minimum, &AskedTemperature::by)),
                  member<"no_preheat">(
                      when(preheat.state != PreheatState::not_known, preheat.asked == PreheatState::none)),
                  member<"interpass_max_degC">(given(maximum, &AskedTemperature::value)),
                  member<"interpass_by">(given(maximum, &AskedTemperature::by)),
                  member<"contradictory">(preheat.state == PreheatState::contradictory),
                  member<"welding_rules">(unless_empty(preheat.welding_rules)),
                  member<"later_layers">(given(later, later_object)),
                  member<"lowered_by">(list_of(preheat.lowered_by, lowering_object)),
                  member<"heat_treatment">(list_of(preheat.heat_treatment, treatment_object)),
                  member<"approved">(unless_empty(preheat.approved)));
}

/// The hold after the last ring: nothing while the work is stopped.
inline std::optional<PostHeat> hold_to_act_on(const Preheat& preheat) {
    const bool acts = preheat.state == PreheatState::figure || preheat.state == PreheatState::none;
    return acts ? preheat.post_heat : std::nullopt;
}

inline auto balance_members(const HeatBalance& balance) {
    const BossRun& cold = balance.cold();
    const bool whole = balance.hot.is_whole();
    return object(member<"boss_kg">(cold.run.boss),
                  member<"preheat_kj">(when(balance.warms_up(), cold.run.warm_up_heat)),
                  member<"peak_degC">(when(whole, [&] { return balance.peak(); })),
                  member<"hottest_start_degC">(when(whole, balance.hot.run.hottest_start)),
                  member<"heater">(balance.heater.kind),
                  member<"heater_kj">(when(cold.is_whole(), [&] { return balance.heater_heat(); })),
                  member<"heater_kw">(balance.heater.power),
                  member<"heater_needed_kw">(heater_needed(balance)),
                  member<"held_duty">(given(cold.run.held, &HeldHeat::duty)),
                  member<"held_kw">(given(cold.run.held, &HeldHeat::mean)));
}

inline auto step_object(const HeatStep& step) {
    const bool placed = !step.pass.empty();
    const bool welds = step.stage == HeatStage::weld;
    return object(member<"step">(step.stage), member<"pass">(unless_empty(step.pass)),
                  member<"layer">(when(placed, step.layer)),
                  member<"after_ring">(when(placed, step.after_ring)), member<"s">(step.time),
                  member<"arc_s">(when(welds, step.arc)), member<"told_pause_s">(when(welds, step.told)),
                  member<"from_degC">(step.from), member<"to_degC">(step.to));
}

inline auto dwell_object(const ToldDwell& dwell) {
    return object(member<"pass">(dwell.pass), member<"layer">(dwell.layer),
                  member<"from_ring">(dwell.from_ring), member<"to_ring">(dwell.to_ring),
                  member<"s">(dwell.told));
}

inline auto cooling_object(const BossCooling& cooling) {
    return object(member<"to_rough_s">(cooling.to_rough), member<"to_finish_s">(cooling.to_finish));
}

/// How a boss cools each way.
inline auto coolings_object(const HeatRun& run) {
    return object(member<"counted">(std::string(run.cools_wrapped ? "wrapped" : "bare")),
                  member<"bare">(cooling_object(run.bare)), member<"wrapped">(cooling_object(run.wrapped)),
                  member<"wrapped_with_plates">(given(run.wrapped_with_plates, cooling_object)));
}

/// The "heat" of a bore, with the figures of its heat balance.
inline auto heat_object(const BorePlan& bore) {
    const BoreHeat& heat = bore.heat;
    const Preheat& preheat = heat.preheat;
    const auto heat_input = [&](EnergyPerLength bore_input) {
        return object(member<"bore">(kj_mm(bore_input)), member<"face">(given(heat.lowest_of_faces, kj_mm)),
                      member<"groove">(given(heat.lowest_of_grooves, kj_mm)));
    };
    const auto hold = [](const PostHeat& asked) {
        return object(member<"post_heat_degC">(asked.temperature.value), member<"post_heat_s">(asked.time));
    };
    const auto advice = [](const Advice& one) {
        return object(member<"kind">(one.kind), member<"text">(one.text), member<"source">(one.source));
    };
    return object(member<"doubt">(preheat.doubt), preheat_members(preheat),
                  member<"heat_input_kj_mm">(given(heat.bore, heat_input)),
                  member<"t85_s">(given(heat.cooling, &CoolingTime::t85)),
                  member<"t85_transition_mm">(given(heat.cooling, &CoolingTime::transition)),
                  member<"hardness_HV">(given(heat.hardness, &Hardness::vickers)),
                  member<"methods">(list_of(preheat.methods, method_object)),
                  member<"advice">(list_of(preheat.advice, advice)), given(hold_to_act_on(preheat), hold),
                  member<"values">(
                      unless_empty(by_name(preheat.values, &AnsweredFigure::name, &AnsweredFigure::number))),
                  member<"hydrogen_ml_100g">(heat.hydrogen_ml_100g), member<"wall_mm">(heat.wall),
                  member<"measuring_distance_mm">(given(heat.wall, measuring_distance)),
                  member<"heated_zone_mm">(given(heat.wall, heated_zone)),
                  member<"equalising_s">(given(heat.wall, equalising_time)),
                  given(bore.heat_balance, balance_members));
}

/// The "time" of a bore that has a heat balance: each part the longest that may be, in steps and as a curve.
/// Parts that a run which breaks off does not reach are absent.
inline auto time_object(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    const bool hot_is_whole = balance.hot.is_whole();
    const bool cold_is_whole = balance.cold().is_whole();
    const bool plated = balance.plated.has_value();
    const auto point = [](const CurvePoint& one) {
        return object(member<"s">(one.time), member<"degC">(one.temperature));
    };
    return object(
        member<"end">(end_of(balance)), member<"preheat_s">(when(balance.warms_up(), cold.warm_up.time)),
        member<"heating_s">(when(balance.warms_up(), cold.warm_up.heating)),
        member<"delay_s">(when(balance.warms_up(), cold.delay)), member<"arc_s">(arc),
        member<"pause_s">(when(hot_is_whole, hot.pausing)),
        member<"told_pause_s">(when(hot_is_whole, hot.told_pausing)),
        member<"stitches">(when(hot.stitches > 0, hot.stitches)),
        member<"rests">(when(hot_is_whole, hot.rests)), member<"rest_s">(when(hot_is_whole, hot.resting)),
        member<"rest_low_s">(when(plated && cold_is_whole, cold.resting)),
        member<"reheats">(when(cold_is_whole, cold.reheats)),
        member<"reheat_s">(when(cold_is_whole, cold.reheating)),
        member<"post_heat_s">(
            when(hot_is_whole && cold_is_whole, std::max(hot.post_heating, cold.post_heating))),
        member<"cool_to_rough_s">(longest_cooling(balance, &BossCooling::to_rough)),
        member<"cool_to_finish_s">(longest_cooling(balance, &BossCooling::to_finish)),
        member<"cooling">(when(hot_is_whole, [&] { return coolings_object(hot); })),
        member<"total_s">(total_time(balance, arc)), member<"dwells">(list_of(hot.dwells, dwell_object)),
        member<"timeline">(list_of(hot.steps, step_object)),
        member<"timeline_plate">(when(plated, [&] { return list_of(cold.steps, step_object); })),
        member<"curve">(list_of(hot.curve, point)));
}

} // namespace ringfill
