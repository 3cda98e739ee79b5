#include <ringfill/table/cutting.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr Span cut{0, 100, true};             // mm
constexpr Span bore_size{0, 10'000, true};    // mm
constexpr Span standing_minutes{0, 14'400};   // ten days
constexpr Span edge_minutes{0, 14'400, true}; // ten days
constexpr Span temperature_celsius{-60, 700}; // degC
constexpr Span bar_speed{0, 6'000};           // rev/min

constexpr auto figures_record = table_record<Cutting>(
    "cutting",
    field<&Cutting::cutting_speed>("cutting_speed_m_min", Span{0, 10'000, true}, R"([60, "practice"])"),
    field<&Cutting::feed>("feed_mm", cut, R"([0.15, "practice"])"),
    field<&Cutting::facing_feed>("facing_feed_mm", cut, R"([0.127, "practice"])"),
    field<&Cutting::rough_cut>("rough_cut_mm", cut, R"([1.5, "practice"])"),
    field<&Cutting::semi_finish_cut>("semi_finish_cut_mm", cut, R"([0.5, "practice"])"),
    field<&Cutting::finish_cut>("finish_cut_mm", cut, R"([0.25, "practice"])"),
    field<&Cutting::nose_radius>("nose_radius_mm", cut, R"([0.8, "practice"])"),
    field<&Cutting::edge_life>("edge_life_min", edge_minutes, R"([20, "practice"])"),
    field<&Cutting::expansion>("expansion_per_K", Span{0, 1e-3, true}, R"([12e-6, "practice"])"),
    field<&Cutting::rough_below>("rough_below_degC", temperature_celsius, R"([60, "practice"])"),
    field<&Cutting::finish_below>("finish_below_degC", temperature_celsius, R"([30, "practice"])"));

constexpr auto bars_record = table_record<Cutting>(
    "bars", field<&Cutting::small_bar>("small_bar_rpm", bar_speed, R"([100, 400, "practice"])"),
    field<&Cutting::large_bar>("large_bar_rpm", bar_speed, R"([20, 200, "practice"])"),
    field<&Cutting::axial_feed>("axial_feed_mm_min", Span{0, 100'000}, R"([0, 60, "practice"])"),
    field<&Cutting::bores>("bores_mm", bore_size, R"([40, 900, "practice"])"),
    field<&Cutting::bit_step>("bit_step_mm", cut, R"([0.0254, "practice"])"),
    field<&Cutting::bar_drive>("drive_kW", Span{0, 100, true}, R"([1.5, "practice"])"));

void check_standing(StandingTime& time, const Entry& entry) {
    if (!time.usual.source.empty() && !time.range.source.empty() && is_outside(time.usual, time.range))
        entry.refuse("minutes", "lies outside its range", "write both as your shop finds them");
}

constexpr auto time_record = table_record<StandingTime, check_standing>(
    "a standing time", field<&StandingTime::usual>("minutes", standing_minutes, R"([3, "practice"])"),
    field<&StandingTime::range>("range_minutes", standing_minutes, R"([2, 6, "practice"])"));

constexpr auto standing_record = table_record<Cutting>(
    "standing", field<&Cutting::tool_set>("tool_set", time_record),
    field<&Cutting::trim>("trim", time_record), field<&Cutting::facing_head>("facing_head", time_record),
    field<&Cutting::groove>("groove", time_record), field<&Cutting::hole>("hole", time_record),
    field<&Cutting::chamfer>("chamfer", time_record), field<&Cutting::bar_move>("bar_move", time_record));

} // namespace

Cutting read_cutting(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Cutting, R"("ringfill-cutting/1")">(
        files, sources, "the table of cutting", block<Cutting>("cutting", figures_record),
        block<Cutting>("bars", bars_record), block<Cutting>("standing", standing_record));
}

} // namespace ringfill
