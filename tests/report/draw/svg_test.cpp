#include <catch2/catch.hpp>

#include <limits>
#include <stdexcept>

#include "report/draw/drawing_parts.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string hostile =
    "<script>alert(1)</script>\"'><img onerror=x>&amp; \u202Egnp.\u2066 \x01\x1b[2J \xff";

} // namespace

TEST_CASE("markup in a text stays text, and nothing in it disturbs a line") {
    CHECK(escape_markup("a < b & \"c\" > 'd'") == "a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;");
    CHECK(escape_markup("&amp;") == "&amp;amp;");
    CHECK(escape_markup("90 µm, Ø, 45°") == "90 µm, Ø, 45°");
    CHECK(escape_markup("a\u202Eb\x07\n") == "a\uFFFDb\uFFFD\uFFFD");
    CHECK(escape_markup("\xff") == "\uFFFD");
    const std::string long_text(5'000, 'x');
    CHECK(escape_markup(long_text) == long_text);
}

TEST_CASE("hostile texts come back from a parser as they went in, in no other place") {
    Svg svg;
    svg.text({1, 5}, {hostile, hostile});
    svg.circle({1, 1}, 2, thin_pen, hostile);
    const std::string text = svg.drawing(hostile, hostile, hostile, 10, 1);
    CHECK(text.find("<script") == std::string::npos);
    CHECK(text.find("<img") == std::string::npos);
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find("\u202E") == std::string::npos);
    const Drawing drawing = drawing_of(text);
    const std::vector<std::string> expected = {"svg", "title", "desc", "g", "circle", "g", "text", "tspan"};
    CHECK(drawing.elements == expected);
    CHECK(drawing.title.starts_with("<script>alert(1)</script>\"'><img onerror=x>&amp; "));
    CHECK(drawing.circles.front().figure == drawing.title);
    CHECK(drawing.description == drawing.title);
    CHECK(drawing.texts.front().lines.back() == drawing.title);
}

TEST_CASE("a drawing names its title and description, and only by its own ids") {
    const Drawing drawing = drawing_of(Svg().drawing("bore-1-cross", "A bore", "Round.", 60.5, 3.25));
    CHECK(drawing.labelled_by == "bore-1-cross-title bore-1-cross-desc");
    CHECK(drawing.ids == std::vector<std::string>{"bore-1-cross-title", "bore-1-cross-desc"});
    CHECK(drawing.width == 85);
    CHECK(drawing.height == 60.5);
    CHECK(drawing.mm_per_unit == 3.25);
}

TEST_CASE("numbers are fixed, short and finite") {
    CHECK(svg_number(1.5) == "1.5");
    CHECK(svg_number(-0.0001) == "0");
    CHECK(svg_number(0) == "0");
    CHECK(svg_number(100) == "100");
    CHECK(svg_number(12.34567) == "12.346");
    CHECK(svg_number(12.34567, 4) == "12.3457");
    CHECK(svg_number(-3, 0) == "-3");
    CHECK(svg_number(10, 0) == "10");
    CHECK(svg_number(1e9) == "1000000000");
    CHECK_THROWS_AS(svg_number(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
    CHECK_THROWS_AS(svg_number(std::numeric_limits<double>::infinity()), std::logic_error);
    Svg svg;
    CHECK_THROWS_AS(svg.line({std::nan(""), 0}, {1, 1}, thin_pen), std::logic_error);
    CHECK_THROWS_AS(svg.text({0, std::nan("")}, {"x"}), std::logic_error);
}
