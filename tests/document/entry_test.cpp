#include <catch2/catch.hpp>

#include <array>
#include <stdexcept>

#include <ringfill/document/described.hpp>
#include <ringfill/document/parse.hpp>

#include "document/fault_words.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr std::array<std::string_view, 2> colours = {"red", "green"};

constexpr std::array inner_fields = {
    Field{.name = "n", .kind = Kind::number, .required = true, .span = {0, 9}, .sample = "1"}};
constexpr Record inner_record{"a part", "", inner_fields};

constexpr std::array fields = {
    Field{.name = "title", .span = {1, 5}, .sample = R"("pins")"},
    Field{.name = "colour",
          .kind = Kind::word,
          .fallback = "red",
          .fallback_source = "practice",
          .sample = R"("red")",
          .words = colours},
    Field{.name = "shade", .kind = Kind::word, .sample = R"("red")", .words = colours},
    Field{.name = "colours",
          .kind = Kind::word,
          .shape = Shape::list,
          .sample = R"(["red"])",
          .words = colours,
          .least = 1,
          .most = 3},
    Field{.name = "wet", .kind = Kind::flag, .sample = "false"},
    Field{.name = "ratio", .kind = Kind::number, .span = {0, 1, true}, .sample = "0.5"},
    Field{.name = "count", .kind = Kind::count, .span = {1, 100}, .sample = "2"},
    Field{.name = "percent",
          .kind = Kind::number,
          .shape = Shape::named,
          .span = {0, 100},
          .sample = R"({ "C": 0.4 })"},
    Field{.name = "part", .kind = Kind::object, .sample = "{ ... }", .record = &inner_record},
    Field{.name = "parts",
          .kind = Kind::object,
          .shape = Shape::list,
          .sample = "[{ ... }]",
          .record = &inner_record,
          .least = 1,
          .most = 2},
    Field{.name = "named",
          .kind = Kind::object,
          .shape = Shape::named,
          .sample = R"({ "a": { ... } })",
          .record = &inner_record,
          .least = 1},
};
constexpr Record record{"a thing", "", fields};

using Numbers = std::vector<std::pair<std::string, double>>;

/// What a member of some type gets from a field; nothing when it gets nothing.
template <class T>
std::optional<T> one(const Entry& entry, std::string_view name) {
    T to{};
    return FieldOf<T>::fill(entry, entry.field(name), to) ? std::optional(to) : std::nullopt;
}

/// What a member that holds many gets from a field.
template <class T>
T all(const Entry& entry, std::string_view name) {
    T to{};
    FieldOf<T>::fill(entry, entry.field(name), to);
    return to;
}

/// One text read as a thing, with all that is noted on the way.
struct Read {
    explicit Read(const std::string& text)
        : document(parse("f", text, Origin::job)), reading{document}, entry(reading, document.root, record) {}

    /// The faults without their excerpts, one a line.
    std::string faults() {
        std::string all;
        for (Fault fault : reading.faults) {
            fault.excerpt.clear();
            all += to_string(fault) + '\n';
        }
        return all;
    }

    std::vector<Entry> objects(std::string_view name) const { return entry.objects(entry.field(name)); }
    Entry part() const { return entry.object(entry.field("part")).value(); }

    Document document;
    Reading reading;
    Entry entry;
};

} // namespace

TEST_CASE("what fits its description comes back as it stands") {
    Read read(
        R"({"title": "pins", "colour": "green", "colours": ["red", "green"], "wet": true, "ratio": 1, "count": 100,
               "percent": {"C": 0.4, "Mn": 1}, "part": {"n": 3}, "parts": [{"n": 4}, {"n": 5}], "named": {"x.y": {"n": 6}}})");
    CHECK(one<std::string>(read.entry, "title") == "pins");
    CHECK(one<std::string>(read.entry, "colour") == "green");
    CHECK(all<std::vector<std::string>>(read.entry, "colours") == std::vector<std::string>{"red", "green"});
    CHECK(one<bool>(read.entry, "wet") == true);
    CHECK(one<double>(read.entry, "ratio") == 1.0);
    CHECK(one<int>(read.entry, "count") == 100);
    CHECK(all<Numbers>(read.entry, "percent") == Numbers{{"C", 0.4}, {"Mn", 1}});
    CHECK(one<double>(read.part(), "n") == 3.0);
    CHECK(one<double>(read.objects("parts").at(1), "n") == 5.0);
    CHECK(read.objects("parts").at(1).path() == "parts[1]");
    CHECK(read.objects("named").at(0).name() == "x.y");
    CHECK(read.faults().empty());
    CHECK(read.reading.assumed.empty());
}

TEST_CASE("what is absent comes back as nothing, or as the fallback, noted") {
    Read read("{}");
    CHECK_FALSE(one<std::string>(read.entry, "title"));
    CHECK_FALSE(one<std::string>(read.entry, "shade"));
    CHECK(all<std::vector<std::string>>(read.entry, "colours").empty());
    CHECK_FALSE(one<bool>(read.entry, "wet"));
    CHECK_FALSE(one<double>(read.entry, "ratio"));
    CHECK_FALSE(one<int>(read.entry, "count"));
    CHECK(all<Numbers>(read.entry, "percent").empty());
    CHECK_FALSE(read.entry.object(read.entry.field("part")));
    CHECK(read.objects("parts").empty());
    CHECK(read.objects("named").empty());
    CHECK(read.reading.assumed.empty());
    CHECK(one<std::string>(read.entry, "colour") == "red");
    REQUIRE(read.reading.assumed.size() == 1);
    CHECK(read.reading.assumed[0].path == "colour");
    CHECK(read.reading.assumed[0].value == "red");
    CHECK(read.reading.assumed[0].source == "practice");
    CHECK(read.faults().empty());
}

TEST_CASE("unknown and missing fields are noted on opening") {
    Read read("{\"titel\": 1, \"x\": 2,\n\"part\": {}}");
    CHECK(
        read.faults() ==
        "f:1:2: titel: is not a field of a thing; did you mean \"title\"?\n"
        "f:1:14: x: is not a field of a thing; known here: title, colour, shade, colours, wet, ratio, count, "
        "percent, part, parts, named\n");
    read.reading.faults.clear();
    CHECK_FALSE(one<double>(read.part(), "n"));
    CHECK(read.faults() == "f:2:9: part.n: is missing; write \"n\": 1\n");
}

TEST_CASE("the right field with the wrong kind of value says what was expected") {
    Read read(
        R"({"title": 5, "colour": 1, "colours": "red", "wet": "yes", "ratio": "0.5", "count": true, "percent": 3, "part": [],
"parts": {}, "named": "x", "shade": null})");
    CHECK_FALSE(one<std::string>(read.entry, "title"));
    CHECK_FALSE(one<std::string>(read.entry, "colour"));
    CHECK_FALSE(one<std::string>(read.entry, "shade"));
    CHECK(all<std::vector<std::string>>(read.entry, "colours").empty());
    CHECK_FALSE(one<bool>(read.entry, "wet"));
    CHECK_FALSE(one<double>(read.entry, "ratio"));
    CHECK_FALSE(one<int>(read.entry, "count"));
    CHECK(all<Numbers>(read.entry, "percent").empty());
    CHECK_FALSE(read.entry.object(read.entry.field("part")));
    CHECK(read.objects("parts").empty());
    CHECK(read.objects("named").empty());
    CHECK(read.reading.assumed.empty());
    CHECK(read.faults() ==
          "f:1:11: title: 5 is a number, not a text; write it like \"pins\"\n"
          "f:1:24: colour: 1 is a number, not one of the words; write it like \"red\"\n"
          "f:2:37: shade: is null, not one of the words; write it like \"red\"\n"
          "f:1:38: colours: \"red\" is a text, not a list; write it like [\"red\"]\n"
          "f:1:52: wet: \"yes\" is a text, not true or false; write it like false\n"
          "f:1:68: ratio: \"0.5\" is a text, not a plain number; write it without quotes and unit\n"
          "f:1:84: count: is true or false, not a plain number; write a number\n"
          "f:1:101: percent: 3 is a number, not an object in braces; write it like { \"C\": 0.4 }\n"
          "f:1:112: part: is a list, not an object in braces; write it like { ... }\n"
          "f:2:10: parts: is an object, not a list; write it like [{ ... }]\n"
          "f:2:23: named: \"x\" is a text, not an object in braces; write it like { \"a\": { ... } }\n");
}

TEST_CASE("values out of their range say what the range is") {
    Read read(
        R"({"title": "", "ratio": 0, "count": 2.5, "percent": {"C": 101, "Mn": "1"}, "colour": "gren", "colours": ["rde", 1, "red"]})");
    CHECK_FALSE(one<std::string>(read.entry, "title"));
    CHECK_FALSE(one<double>(read.entry, "ratio"));
    CHECK_FALSE(one<int>(read.entry, "count"));
    CHECK(all<Numbers>(read.entry, "percent").empty());
    CHECK_FALSE(one<std::string>(read.entry, "colour"));
    CHECK(all<std::vector<std::string>>(read.entry, "colours") == std::vector<std::string>{"red"});
    CHECK(read.faults() ==
          "f:1:11: title: \"\" is empty; write 1 to 5 characters\nf:1:24: ratio: 0" +
              out_of_range("over 0 and at most 1") +
              "\nf:1:36: count: 2.5 is not a whole number; write how many there are\nf:1:58: percent.C: 101" +
              out_of_range("from 0 to 100") +
              "\nf:1:69: percent.Mn: \"1\" is a text, not a plain number; write it without quotes and "
              "unit\nf:1:85: colour: \"gren\" is not a word used here; did you mean \"green\"?\nf:1:105: "
              "colours[0]: \"rde\" is not a word used here; did you mean \"red\"?\nf:1:112: colours[1]: 1 is "
              "not a word used here; known here: red, green\n");
}

TEST_CASE("texts are counted in characters") {
    Read read(R"({"title": "½½½½½"})");
    CHECK(one<std::string>(read.entry, "title") == "½½½½½");
    Read longer(R"({"title": "½½½½½½"})");
    CHECK_FALSE(one<std::string>(longer.entry, "title"));
    CHECK(longer.faults() == "f:1:11: title: \"½½½½½½\" is too long; write 1 to 5 characters\n");
}

TEST_CASE("lists and objects of objects have their sizes") {
    Read read(R"({"parts": [], "colours": ["red", "red", "red", "red"], "named": {}})");
    CHECK(read.objects("parts").empty());
    CHECK(all<std::vector<std::string>>(read.entry, "colours").empty());
    CHECK(read.objects("named").empty());
    CHECK(read.faults() == "f:1:11: parts: has 0 of them; give 1 to 2\n"
                           "f:1:26: colours: has 4 of them; give 1 to 3\n"
                           "f:1:65: named: is empty; write { \"a\": { ... } }\n");
}

TEST_CASE("what should be an object and is not is noted once") {
    Read read("[1]");
    CHECK_FALSE(one<std::string>(read.entry, "title"));
    CHECK(read.faults() == "f:1:1:" + no_object("a list", "a thing") + "\n");
}

TEST_CASE("asking for a field that is not described is our own error") {
    Read read("{}");
    CHECK_THROWS_AS(one<double>(read.entry, "nothing"), std::logic_error);
}
