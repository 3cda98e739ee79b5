#include <fmt/format.h>

#include <ringfill/material/filler.hpp>
#include <ringfill/table/figure.hpp>
#include <ringfill/units/decimal.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

using namespace metal_spans;

constexpr Span not_negative{0, 1e6};
constexpr Span linear_mass{0, 1, true};
constexpr Span piece_length{100, 3'000};
constexpr Span stub_length{0, 500};
constexpr Span piece_mass{0.1, 5'000};
constexpr Span rate{0, 50, true};

constexpr auto melting_record = table_record<MeltingCurve>(
    "a melting curve", must<&MeltingCurve::a>("a_mm_per_A_s", positive, R"([0.3, "Norrish"])"),
    must<&MeltingCurve::b>("b_per_A2_s", not_negative, R"([5e-5, "Norrish"])"));

constexpr auto window_record = table_record<Window>(
    "a window of settings", field<&Window::wire_feed>("wire_feed_m_min", positive, R"([2, 12, "practice"])"),
    field<&Window::current>("current_A", positive, R"([70, 260, "practice"])"),
    field<&Window::voltage>("voltage_V", positive, R"([15, 22, "practice"])"),
    field<&Window::travel>("travel_mm_min", positive, R"([100, 1000, "practice"])"),
    field<&Window::spray_from>("spray_from_A", positive, R"([220, "spray-currents"])"));

constexpr Field window_of(std::string_view transfer) {
    return bare_field(transfer, window_record, "{ ... }");
}
constexpr Field windows_fields[] = {window_of("short"), window_of("pulse"), window_of("spray"),
                                    window_of("globular")};
constexpr Record windows_record{"windows of settings by transfer", "", windows_fields};

void read_windows(WireSize& size, const Entry& entry, const Field& field) {
    if (const auto windows = entry.object(field))
        for (const Field& transfer : windows_fields)
            if (const auto window = windows->object(transfer))
                size.windows.emplace_back(transfer.name, read_record<Window>(*window));
}

constexpr auto feed_point_record = table_record<FeedPoint>(
    "a point of the feed table", must<&FeedPoint::feed>("wire_feed_m_min", positive, R"([8, "practice"])"),
    must<&FeedPoint::current>("current_A", positive, R"([180, "practice"])"));
constexpr auto rate_point_record = table_record<RatePoint>(
    "a point of the rate table", must<&RatePoint::current>("current_A", positive, R"([140, "practice"])"),
    must<&RatePoint::rate>("rate_kg_h", rate, R"([1.2, "practice"])"));

/// Both figures of a table rise from point to point.
template <class Point, class Value>
void check_rising(const std::vector<Point>& points, Sourced<Value> Point::*figure, const Entry& entry,
                  std::string_view field, std::string remedy) {
    const Point* before = nullptr;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Point& point = points[i];
        if ((point.*figure).source.empty() || point.current.source.empty())
            continue;
        if (before && ((point.*figure).value <= (before->*figure).value ||
                       point.current.value <= before->current.value))
            entry.objects_again(field)[i].refuse("does not rise over the point before it", remedy);
        before = &point;
    }
}

constexpr Field size_fields[] = {
    field<&WireSize::linear_mass>("linear_mass_kg_m", linear_mass, R"([0.0072, "practice"])"),
    field<&WireSize::melting>("melting", melting_record),
    field<&WireSize::feed_table>("feed_table", list_of(feed_point_record, 2, 100)),
    field<&WireSize::window>("window", window_record),
    field<&read_windows>("windows", windows_record),
    field<&WireSize::length>("length_mm", piece_length, R"([350, "practice"])"),
    field<&WireSize::stub>("stub_mm", stub_length, R"([50, "practice"])"),
    field<&WireSize::mass>("mass_g", piece_mass, R"([36, "practice"])"),
    field<&WireSize::per_A>("rate_kg_h_A", rate, R"([0.009, "practice"])").times(1 / factor::hour),
    field<&WireSize::rates>("rate_table", list_of(rate_point_record, 2, 100)),
    field<&WireSize::range>("rate_kg_h", rate, R"([0.5, 3, "practice"])"),
};

/// What a size of a form must have, and what does not go with it.
struct FormOfSize {
    std::string_view words;
    std::vector<std::string_view> needed;
    std::vector<std::string_view> refused;
};

FormOfSize form_of_size(FillerForm form) {
    if (form == FillerForm::stick)
        return {"an electrode",
                {"length_mm", "stub_mm", "mass_g"},
                {"linear_mass_kg_m", "melting", "feed_table", "windows", "rate_kg_h"}};
    if (form == FillerForm::rod)
        return {"a rod",
                {"length_mm", "stub_mm"},
                {"linear_mass_kg_m", "melting", "feed_table", "windows", "rate_kg_h_A", "rate_table"}};
    return {
        "wire off a spool", {}, {"length_mm", "stub_mm", "mass_g", "rate_kg_h_A", "rate_table", "rate_kg_h"}};
}

void check_fields(const Entry& entry, FillerForm form) {
    const auto& [words, needed, refused] = form_of_size(form);
    for (const std::string_view field : refused)
        if (entry.has(field))
            entry.refuse(field, fmt::format("does not go with {}", words), "take it out");
    for (const std::string_view field : needed)
        if (!entry.has(field))
            entry.refuse_missing(field, fmt::format("{} needs it", words));
    if (form == FillerForm::stick && entry.has("rate_kg_h_A") == entry.has("rate_table"))
        entry.refuse(entry.has("rate_table") ? "gives its rate twice" : "gives no rate",
                     R"(write either "rate_kg_h_A" or "rate_table")");
}

void check_size(WireSize& size, const Entry& entry) {
    check_rising(size.feed_table, &FeedPoint::feed, entry, "feed_table",
                 "list the points with feed and current rising");
    check_rising(size.rates, &RatePoint::rate, entry, "rate_table",
                 "list the points with current and rate rising");
    if (size.stub.value >= size.length.value && entry.has("length_mm"))
        entry.refuse("stub_mm", "is as long as the whole", "write the piece that is thrown away");
}

} // namespace

const Record filler_size_record = record_of<WireSize, check_size>("a diameter", "", size_fields);

WireSize read_filler_size(const Entry& entry, FillerForm form) {
    WireSize size;
    size.name = entry.name();
    const auto diameter_mm = decimal_of(size.name);
    if (diameter_mm && as_double(*diameter_mm) > 0 && as_double(*diameter_mm) <= 10)
        size.diameter = millimetres(as_double(*diameter_mm));
    else
        entry.refuse("does not stand under a diameter",
                     R"(write the diameter in mm as the name, such as "1.0")");
    check_fields(entry, form);
    fill_record(size, entry);
    return size;
}

} // namespace ringfill
