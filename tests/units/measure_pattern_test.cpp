#include <catch2/catch.hpp>

#include <map>
#include <random>
#include <regex>

#include <ringfill/fault/printable.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/measure_pattern.hpp>
#include <ringfill/units/typed_text.hpp>
#include <ringfill/units/unit.hpp>

using namespace ringfill;

namespace {

const std::vector<Kind> kinds = {Kind::share,       Kind::length,    Kind::volume,  Kind::mass,
                                 Kind::speed,       Kind::mass_flow, Kind::current, Kind::volume_flow,
                                 Kind::voltage,     Kind::power,     Kind::turning, Kind::conductance,
                                 Kind::temperature, Kind::angle,     Kind::time,    Kind::energy_per_length};

/// A character a place, as an engine for regular expressions sees a text.
std::wstring wide(std::string_view utf8) {
    std::wstring text;
    for (std::size_t i = 0; i < utf8.size(); i += character_at(utf8, i).bytes)
        text += static_cast<wchar_t>(character_at(utf8, i).code);
    return text;
}

bool fits(std::string_view text, Kind kind, bool may_be_negative = true) {
    static std::map<std::pair<Kind, bool>, std::wregex> known;
    auto pattern = known.find({kind, may_be_negative});
    if (pattern == known.end())
        pattern =
            known.emplace(std::pair(kind, may_be_negative), wide(measure_pattern(kind, may_be_negative)))
                .first;
    return std::regex_match(wide(text), pattern->second);
}

bool is_read(std::string_view text, Kind kind) {
    return std::holds_alternative<double>(measure(text, kind));
}

/// A number that cannot be held ends the reading before the form is judged.
bool is_too_large(std::string_view text, Kind kind) {
    const auto measured = measure(text, kind);
    const auto* fault = std::get_if<NotMeasured>(&measured);
    return fault && fault->reason == "is too large";
}

/// The characters that stand for a fraction, such as ½.
std::vector<std::string_view> fraction_signs() {
    std::vector<std::string_view> found;
    for (const Sign& sign : typed_signs)
        if (sign.plain.size() > 1)
            found.push_back(sign.typed);
    return found;
}

/// A random text of the pieces that quantities are made of; most of them are wrong.
std::string random_text(std::mt19937& random, Kind kind) {
    std::vector<std::string> pieces = {"1", "12", "0",  ".5",     "2.",     "1e2",    "1e-2", "-",
                                       "+", " ",  "  ", "/",      "3/4",    "0/3",    "3/0",  " ",
                                       " ", ",",  "x",  "\u2212", "\u00A0", "\u2044", "e"};
    for (const std::string& symbol : symbols_of(kind))
        pieces.insert(pieces.end(), 2, symbol);
    for (const std::string_view sign : fraction_signs())
        pieces.emplace_back(sign);
    std::string text;
    for (std::size_t count = 1 + random() % 7; count > 0; --count)
        text += pieces[random() % pieces.size()];
    return text;
}

/// The one form that the pattern is told to judge more strictly.
bool has_digit_after_fraction_character(std::string_view text) {
    for (const std::string_view sign : fraction_signs())
        for (std::size_t at = text.find(sign); at != std::string_view::npos; at = text.find(sign, at + 1))
            if (const std::size_t next = at + sign.size();
                next < text.size() && text[next] >= '0' && text[next] <= '9')
                return true;
    return false;
}

} // namespace

TEST_CASE("every unit after a number fits its kind and no other kind that does not know it") {
    for (const Kind kind : kinds)
        for (const Kind other : kinds)
            for (const std::string& symbol : symbols_of(kind)) {
                CAPTURE(symbol);
                CHECK(fits("12.5 " + symbol, other) == is_read("12.5 " + symbol, other));
                CHECK(fits("12.5" + symbol, kind));
            }
}

TEST_CASE("lengths as people type them fit, and what is not read does not") {
    for (const char* good :
         {"90.4 mm", "3-9/16 in", "3 9/16\"", "3½ in", "½in", "1 ft 6-1/2 in", "1'-6\"", "1'6''", "6''",
          "1 m 5 cm", " 90 mm ", "90\u00A0mm", ".5 in", "12. mm", "1.2e3 mm", "+4 mm"}) {
        CAPTURE(good);
        CHECK(fits(good, Kind::length, false));
        CHECK(is_read(good, Kind::length));
    }
    for (const char* bad :
         {"", " ", "90", "mm", "90,4 mm", "3-9/0 in", "100 mm 5 mm", "5 mm 1 m", "6 ft -", "about 1 mm",
          "100 furlongs", "1 m-5 cm", "1.5 3/4 in", "1 2 mm", "--1 mm", "1 ft.5 in", "90 mm\n"}) {
        CAPTURE(bad);
        CHECK(!fits(bad, Kind::length));
        CHECK(!is_read(bad, Kind::length));
    }
}

TEST_CASE("a minus sign stands only where it may") {
    CHECK(fits("\u22122 °C", Kind::temperature, true));
    CHECK(fits("-1 mm", Kind::length, true));
    CHECK(!fits("-1 mm", Kind::length, false));
    CHECK(!fits("1 °C 2 °F", Kind::temperature, true));
}

TEST_CASE("a kind without units has no pattern") {
    CHECK_THROWS_AS(measure_pattern(Kind::word, false), std::logic_error);
}

TEST_CASE("random texts fit exactly when they are read") {
    std::mt19937 random(20'231); // fixed, so that a failure repeats
    int read = 0;
    for (int i = 0; i < 60'000; ++i) {
        const Kind kind = kinds[random() % kinds.size()];
        const std::string text = random_text(random, kind);
        if (has_digit_after_fraction_character(text) || is_too_large(text, kind))
            continue;
        CAPTURE(text, static_cast<int>(kind));
        REQUIRE(fits(text, kind) == is_read(text, kind));
        read += is_read(text, kind) ? 1 : 0;
    }
    CHECK(read > 1'000);
}
