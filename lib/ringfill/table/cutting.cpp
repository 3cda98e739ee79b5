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
constexpr Span metres_a_minute{0, 10'000, true};
constexpr Span vickers{0, 3'000, true};

void check_tool(ToolFigures& figures, const Entry& entry) {
    const auto judge = [&](const char* name, const auto& figure, const auto& range) {
        if (!figure.source.empty() && !range.source.empty() && is_outside(figure, range))
            entry.refuse(name, "lies outside its range", "write both as your shop finds them");
    };
    judge("cutting_speed_m_min", figures.cutting_speed, figures.speed_range);
    judge("feed_mm", figures.feed, figures.feed_range);
    judge("edge_life_min", figures.edge_life, figures.life_range);
}

constexpr auto tool_record = table_record<ToolFigures, check_tool>(
    "how a deposit is cut",
    field<&ToolFigures::cutting_speed>("cutting_speed_m_min", metres_a_minute, R"([60, "practice"])"),
    field<&ToolFigures::speed_range>("speed_range_m_min", metres_a_minute, R"([30, 100, "practice"])"),
    field<&ToolFigures::skin_speed>("skin_speed_m_min", metres_a_minute, R"([45, "practice"])"),
    field<&ToolFigures::feed>("feed_mm", cut, R"([0.15, "practice"])"),
    field<&ToolFigures::feed_range>("feed_range_mm", cut, R"([0.05, 0.20, "practice"])"),
    field<&ToolFigures::edge_life>("edge_life_min", edge_minutes, R"([20, "practice"])"),
    field<&ToolFigures::life_range>("life_range_min", edge_minutes, R"([10, 45, "practice"])"));

template <auto Rows, DepositGroup Group>
void fill_row(Cutting& cutting, const Entry& entry, const Field& field) {
    FieldOf<ToolFigures>::fill(entry, field, (cutting.*Rows)[static_cast<std::size_t>(Group)]);
}

template <DepositGroup Group>
void read_fillers(Cutting& cutting, const Entry& entry, const Field& field) {
    for (const Spot& spot : entry.elements(field))
        if (const std::string* text = spot.value->text(); text && !text->empty())
            cutting.deposits.emplace_back(*text, Group);
        else
            spot.refuse("is not a name", R"(write a group, or a name such as "steel/ER70S-6")");
}

/// A block with what Made describes of every group.
template <template <DepositGroup> class Made>
constexpr auto by_deposit(std::string_view name) {
    using enum DepositGroup;
    return table_record<Cutting>(name, Made<mild>::field(), Made<low_alloy>::field(), Made<hardened>::field(),
                                 Made<austenitic>::field(), Made<manganese>::field(), Made<nickel>::field(),
                                 Made<bronze>::field(), Made<cast_iron>::field());
}

template <DepositGroup Group>
struct FillersOf {
    static constexpr MadeField field() {
        return ringfill::field<&read_fillers<Group>>(word_of(Group), list_of(Span{}, 1, 200),
                                                     R"(["carbon_steel_filler"])")
            .holds(Kind::text, Shape::list);
    }
};

template <auto Rows, DepositGroup Group>
constexpr MadeField row_field() {
    return field<&fill_row<Rows, Group>>(word_of(Group), tool_record).holds(Kind::object);
}
template <DepositGroup Group>
struct CarbideOn {
    static constexpr MadeField field() { return row_field<&Cutting::carbide, Group>(); }
};
template <DepositGroup Group>
struct HssOn {
    static constexpr MadeField field() { return row_field<&Cutting::hss, Group>(); }
};

constexpr auto fillers_record = by_deposit<FillersOf>("the fillers by their deposits");
constexpr auto carbide_record = by_deposit<CarbideOn>("how carbide cuts");
constexpr auto hss_record = by_deposit<HssOn>("how high-speed steel cuts");

constexpr auto figures_record = table_record<Cutting>(
    "cutting", field<&Cutting::facing_feed>("facing_feed_mm", cut, R"([0.127, "practice"])"),
    field<&Cutting::rough_cut>("rough_cut_mm", cut, R"([1.5, "practice"])"),
    field<&Cutting::semi_finish_cut>("semi_finish_cut_mm", cut, R"([0.5, "practice"])"),
    field<&Cutting::finish_cut>("finish_cut_mm", cut, R"([0.25, "practice"])"),
    field<&Cutting::nose_radius>("nose_radius_mm", cut, R"([0.8, "practice"])"),
    field<&Cutting::hardened_over_HV>("hardened_over_HV", vickers, R"([350, "practice"])"),
    field<&Cutting::bored_up_to_HV>("bored_up_to_HV", vickers, R"([446, "practice"])"),
    field<&Cutting::least_last_cut>("least_last_cut_mm", cut, R"([0.5, "practice"])"),
    field<&Cutting::least_feed>("least_feed_mm", cut, R"([0.12, "practice"])"),
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
        files, sources, "the table of cutting", block<Cutting>("fillers", fillers_record),
        block<Cutting>("carbide", carbide_record), block<Cutting>("HSS", hss_record),
        block<Cutting>("cutting", figures_record), block<Cutting>("bars", bars_record),
        block<Cutting>("standing", standing_record));
}

} // namespace ringfill
