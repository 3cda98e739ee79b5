#include <fmt/format.h>

#include <ringfill/material/filler.hpp>
#include <ringfill/table/figure.hpp>
#include <ringfill/units/decimal.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr Span not_negative{0, 1e6};
constexpr Span linear_mass{0, 1, true};
constexpr Span piece_length{100, 3'000};
constexpr Span stub_length{0, 500};
constexpr Span piece_mass{0.1, 5'000};
constexpr Span rate{0, 50, true};
constexpr std::string_view transfers[] = {"short", "pulse", "spray", "globular"};

constexpr Field melting_fields[] = {
    field<&MeltingCurve::a>("a_mm_per_A_s", metal_spans::positive, R"([0.3, "Norrish"])").required(),
    field<&MeltingCurve::b>("b_per_A2_s", not_negative, R"([5e-5, "Norrish"])").required(),
};
constexpr Record melting_record = record_of<MeltingCurve>("a melting curve", "", melting_fields);

constexpr Field window_fields[] = {
    field<&Window::wire_feed>("wire_feed_m_min", metal_spans::positive, R"([2, 12, "practice"])"),
    field<&Window::current>("current_A", metal_spans::positive, R"([70, 260, "practice"])"),
    field<&Window::voltage>("voltage_V", metal_spans::positive, R"([15, 22, "practice"])"),
    field<&Window::travel>("travel_mm_min", metal_spans::positive, R"([100, 1000, "practice"])"),
    field<&Window::spray_from>("spray_from_A", metal_spans::positive, R"([220, "spray-currents"])"),
};
constexpr Record window_record = record_of<Window>("a window of settings", "", window_fields);

using Windows = std::vector<std::pair<std::string, Window>>;

void read_window(Windows& windows, const Entry& entry, const Field& field) {
    if (const auto window = entry.object(field))
        windows.emplace_back(field.name, read_record<Window>(*window));
}
constexpr Field windows_fields[] = {
    field<&read_window>(transfers[0], window_record, "{ ... }").holds(Kind::object),
    field<&read_window>(transfers[1], window_record, "{ ... }").holds(Kind::object),
    field<&read_window>(transfers[2], window_record, "{ ... }").holds(Kind::object),
    field<&read_window>(transfers[3], window_record, "{ ... }").holds(Kind::object),
};
constexpr Record windows_record = record_of<Windows>("windows of settings by transfer", "", windows_fields);

void read_windows(WireSize& size, const Entry& entry, const Field& field) {
    if (const auto windows = entry.object(field))
        fill_record(size.windows, *windows);
}

/// A point of a table as it stands: two figures, of which one gives the source.
struct TwoFigures {
    Sourced<Current> current;
    Sourced<Speed> feed;
    Sourced<MassFlow> rate;
};
constexpr Field feed_point_fields[] = {
    field<&TwoFigures::feed>("wire_feed_m_min", metal_spans::positive, R"([8, "practice"])").required(),
    field<&TwoFigures::current>("current_A", metal_spans::positive, R"([180, "practice"])").required(),
};
constexpr Field rate_point_fields[] = {
    field<&TwoFigures::current>("current_A", metal_spans::positive, R"([140, "practice"])").required(),
    field<&TwoFigures::rate>("rate_kg_h", rate, R"([1.2, "practice"])").required(),
};
constexpr Record feed_point_record =
    record_of<TwoFigures>("a point of the feed table", "", feed_point_fields);
constexpr Record rate_point_record =
    record_of<TwoFigures>("a point of the rate table", "", rate_point_fields);

/// A table in which both figures rise from point to point.
template <class Point, class Value>
void read_rising(std::vector<Point>& points, const Entry& entry, const Field& field,
                 Sourced<Value> TwoFigures::*figure, Value Point::*member, std::string_view remedy) {
    for (const Entry& one : entry.objects(field)) {
        const auto read = read_record<TwoFigures>(one);
        if ((read.*figure).source.empty() || read.current.source.empty())
            continue;
        if (!points.empty() &&
            ((read.*figure).value <= points.back().*member || read.current.value <= points.back().current))
            one.refuse("does not rise over the point before it", std::string(remedy));
        Point point;
        point.current = read.current.value;
        point.*member = (read.*figure).value;
        point.source = (read.*figure).source;
        points.push_back(std::move(point));
    }
}

void read_feed_table(WireSize& size, const Entry& entry, const Field& field) {
    read_rising(size.feed_table, entry, field, &TwoFigures::feed, &FeedPoint::feed,
                "list the points with feed and current rising");
}

void read_rates(WireSize& size, const Entry& entry, const Field& field) {
    std::vector<RatePoint> rates;
    read_rising(rates, entry, field, &TwoFigures::rate, &RatePoint::rate,
                "list the points with current and rate rising");
    if (size.piece)
        size.piece->rates = std::move(rates);
}

/// A figure of an electrode or rod, which wire does not have.
template <auto Member>
void of_piece(WireSize& size, const Entry& entry, const Field& field) {
    if (size.piece)
        FieldOf<typename Filled<decltype(Member)>::Type>::fill(entry, field, (*size.piece).*Member);
}
template <auto Member>
constexpr Field piece_field(std::string_view name, Span span, std::string_view sample, double factor = 1) {
    Field made = field<Member>(name, span, sample);
    const Field filled = field<&of_piece<Member>>(name, span, sample);
    made.fill = filled.fill;
    made.row = filled.row;
    made.factor *= factor;
    return made;
}

constexpr Field size_fields[] = {
    field<&WireSize::linear_mass>("linear_mass_kg_m", linear_mass, R"([0.0072, "practice"])"),
    field<&WireSize::melting>("melting", melting_record),
    field<&read_feed_table>("feed_table", feed_point_record).holds(Kind::object).list(2, 100),
    field<&WireSize::window>("window", window_record),
    field<&read_windows>("windows", windows_record).holds(Kind::object),
    piece_field<&Piece::length>("length_mm", piece_length, R"([350, "practice"])"),
    piece_field<&Piece::stub>("stub_mm", stub_length, R"([50, "practice"])"),
    piece_field<&Piece::mass>("mass_g", piece_mass, R"([36, "practice"])"),
    piece_field<&Piece::per_A>("rate_kg_h_A", rate, R"([0.009, "practice"])", 1 / factor::hour),
    field<&read_rates>("rate_table", rate_point_record).holds(Kind::object).list(2, 100),
    piece_field<&Piece::range>("rate_kg_h", rate, R"([0.5, 3, "practice"])"),
};

void refuse_fields(const Entry& entry, std::initializer_list<std::string_view> fields, std::string_view of) {
    for (const std::string_view field : fields)
        if (entry.has(field))
            entry.refuse(field, fmt::format("does not go with {}", of), "take it out");
}

/// A wire has a melting curve, an electrode a length, a stub, a mass and a rate, a rod a length and a stub.
void check_fields(const Entry& entry, FillerForm form) {
    const auto need = [&](std::string_view field, std::string_view of) {
        if (!entry.has(field))
            entry.refuse_missing(field, fmt::format("{} needs it", of));
    };
    if (is_wire(form)) {
        refuse_fields(entry, {"length_mm", "stub_mm", "mass_g", "rate_kg_h_A", "rate_table", "rate_kg_h"},
                      "wire off a spool");
        return;
    }
    const std::string_view of = form == FillerForm::stick ? "an electrode" : "a rod";
    refuse_fields(entry, {"linear_mass_kg_m", "melting", "feed_table", "windows"}, of);
    need("length_mm", of);
    need("stub_mm", of);
    if (form == FillerForm::rod) {
        refuse_fields(entry, {"rate_kg_h_A", "rate_table"}, of);
        return;
    }
    need("mass_g", of);
    refuse_fields(entry, {"rate_kg_h"}, of);
    if (entry.has("rate_kg_h_A") == entry.has("rate_table"))
        entry.refuse(entry.has("rate_table") ? "gives its rate twice" : "gives no rate",
                     R"(write either "rate_kg_h_A" or "rate_table")");
}

void check_stub(WireSize& size, const Entry& entry) {
    if (size.piece && size.piece->stub.value >= size.piece->length.value && entry.has("length_mm"))
        entry.refuse("stub_mm", "is as long as the whole", "write the piece that is thrown away");
}

} // namespace

constinit const Record filler_size_record = record_of<WireSize, check_stub>("a diameter", "", size_fields);

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
    if (!is_wire(form))
        size.piece.emplace();
    fill_record(size, entry);
    return size;
}

} // namespace ringfill
