#include <ringfill/table/sticks.hpp>

#include <cmath>

#include <range/v3/algorithm/stable_sort.hpp>

#include <ringfill/table/named_numbers.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// A mark is read by the name on the stick: a number in it is the rating, in the scale that it names.
void check_name(const Stick& stick, const Entry& row, bool in_celsius) {
    const double celsius = stick.rating.value.value() - factor::celsius_zero;
    const double fahrenheit = stick.rating.value.value() / factor::kelvin_per_fahrenheit -
                              factor::fahrenheit_zero / factor::kelvin_per_fahrenheit;
    const std::vector<NamedNumber> numbers = numbers_in(stick.name);
    bool says_rating = numbers.empty();
    bool differs = false;
    for (const auto& [number, word] : numbers) {
        const bool names_celsius = word.ends_with('C') && word.size() <= 4;
        const bool names_fahrenheit = word.ends_with('F') && word.size() <= 4;
        const bool is_celsius = names_celsius || (!names_fahrenheit && in_celsius);
        const double apart = std::abs(number - (is_celsius ? celsius : fahrenheit));
        const double rounded = is_celsius == in_celsius ? 0.05 : 1; // in its other scale
        says_rating = says_rating || apart <= rounded;
        differs = differs || ((names_celsius || names_fahrenheit) && apart > rounded);
    }
    if (differs || !says_rating)
        row.refuse(in_celsius ? "rating_degC" : "rating_degF", "is not the number in the name of the stick",
                   "write the rating that stands on it, in both");
}

/// One rating in one scale: of two nobody can tell which is on the stick.
void check_rating(Stick& stick, const Entry& row) {
    const bool in_celsius = row.has("rating_degC");
    const bool in_fahrenheit = row.has("rating_degF");
    if (!in_celsius && !in_fahrenheit)
        row.refuse("has no rating", R"(write "rating_degC" or "rating_degF")");
    if (in_celsius && in_fahrenheit)
        row.refuse("has two ratings",
                   R"(keep the one that is printed on it, "rating_degC" or "rating_degF")");
    if (in_celsius != in_fahrenheit && !stick.rating.source.empty())
        check_name(stick, row, in_celsius);
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
