#include <ringfill/table/sticks.hpp>

#include <range/v3/algorithm/stable_sort.hpp>

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

constexpr auto stick_record = table_record<Stick, check_rating>(
    "a temperature stick", field<&Stick::units>("units", unit_words, R"("mm")").required(),
    field<&Stick::rating>("rating_degC", Span{0, 700}, R"([110, "practice"])"),
    field<&Stick::rating>("rating_degF", Span{32, 1'292}, R"([225, "practice"])"),
    field<&Stick::stocked>("stocked", "true"));

} // namespace

std::vector<Stick> read_sticks(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Stick> sticks = read_rows<Stick, R"("ringfill-sticks/1")">(
        files, sources, "the table of temperature sticks", "sticks", stick_record);
    ranges::stable_sort(sticks, {}, [](const Stick& stick) { return stick.rating.value; });
    return sticks;
}

} // namespace ringfill
