#include <ringfill/table/sticks.hpp>

#include <algorithm>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

/// One rating in one scale: of two nobody can tell which is on the stick.
void check_rating(Stick&, const Entry& row) {
    const bool in_celsius = row.has("rating_degC");
    const bool in_fahrenheit = row.has("rating_degF");
    if (!in_celsius && !in_fahrenheit)
        row.refuse("has no rating", R"(write "rating_degC" or "rating_degF")");
    if (in_celsius && in_fahrenheit)
        row.refuse("has two ratings",
                   R"(keep the one that is printed on it, "rating_degC" or "rating_degF")");
}

constexpr Field stick_fields[] = {
    field<&Stick::units>("units", unit_words, R"("mm")").required(),
    field<&Stick::rating>("rating_degC", Span{0, 700}, R"([110, "practice"])"),
    field<&Stick::rating>("rating_degF", Span{32, 1'292}, R"([225, "practice"])"),
    field<&Stick::stocked>("stocked", "true"),
};
constexpr Record stick_record = record_of<Stick, check_rating>("a temperature stick", "", stick_fields);

constexpr auto sticks_fields = table_fields<R"("ringfill-sticks/1")">(
    field<&Rows<Stick>::rows>("sticks", stick_record, "{ ... }").required());
constexpr Record sticks_record = record_of<Rows<Stick>>("the table of temperature sticks", "", sticks_fields);

} // namespace

std::vector<Stick> read_sticks(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Stick> sticks = read_table<Rows<Stick>>(files, sources, sticks_record).rows;
    std::stable_sort(sticks.begin(), sticks.end(),
                     [](const Stick& a, const Stick& b) { return a.rating.value < b.rating.value; });
    return sticks;
}

} // namespace ringfill
