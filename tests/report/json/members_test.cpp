#include <catch2/catch.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/members.hpp>

using namespace ringfill;

namespace {

std::string line_of(Value::Object members) {
    return write_json_line(Value(std::move(members)));
}

} // namespace

TEST_CASE("the end of a key says in which unit a quantity is written") {
    CHECK(line_of(object(member<"path_mm">(in_si<Length>(0.25)), member<"rt_um">(in_si<Length>(0.25)),
                         member<"clear_m">(in_si<Length>(0.25)), member<"gas_l">(in_si<Volume>(0.25)),
                         member<"s">(in_si<Time>(0.25)), member<"travel_mm_min">(in_si<Speed>(0.25)),
                         member<"speed_m_min">(in_si<Speed>(0.25)), member<"torch_rpm">(in_si<Turning>(0.25)),
                         member<"peak_degC">(celsius(20)),
                         member<"heat_input_kj_mm">(in_si<EnergyPerLength>(250)),
                         member<"heater_kw">(in_si<Power>(250)))) ==
          "{\"path_mm\":250,\"rt_um\":250000,\"clear_m\":0.25,\"gas_l\":250,\"s\":0.25,"
          "\"travel_mm_min\":15000,\"speed_m_min\":15,\"torch_rpm\":15,\"peak_degC\":20,"
          "\"heat_input_kj_mm\":0.00025,\"heater_kw\":0.25}\n");
}

TEST_CASE("a key and a value that do not fit are found out") {
    // In a list of members each of these does not compile: the key is looked up by the compiler.
    CHECK_THROWS_AS(number_under<Length>("path"), std::logic_error);
    CHECK_THROWS_AS(number_under<Length>("path_kg"), std::logic_error);
    CHECK_THROWS_AS(number_under<Length>("feed_mm_min"), std::logic_error);
    CHECK_THROWS_AS(number_under<Speed>("feed_mm"), std::logic_error);
    CHECK_THROWS_AS(number_under<Temperature>("wait_s"), std::logic_error);
    CHECK_THROWS_AS(number_under<double>("path_mm"), std::logic_error);
    CHECK_THROWS_AS(number_under<int>("wait_s"), std::logic_error);
    CHECK(number_under<Length>("path_mm") != nullptr);
    CHECK(number_under<double>("steps") == nullptr); // an s alone is no unit
    CHECK(number_under<double>("ferrite_pct") == nullptr);
}

TEST_CASE("what is absent is left out, and the rest keeps its order") {
    const std::optional<Length> none;
    const std::optional<std::string> name = "pin";
    CHECK(line_of(
              object(member<"b">(1), member<"wall_mm">(none), member<"name">(name),
                     member<"a">(when(false, 2)), member<"never">(when(false, [&] { return name.value(); })),
                     member<"text">(unless_empty(std::string())), member<"list">(unless_empty(Value::List{})),
                     member<"c">(true))) == "{\"b\":1,\"name\":\"pin\",\"c\":true}\n");
}

TEST_CASE("members without a key of their own stand in their place") {
    const std::optional<Mass> mass = in_si<Mass>(2);
    const auto more = [](Mass one) { return object(member<"laid_kg">(one), member<"known">(true)); };
    CHECK(line_of(object(member<"a">(1), given(mass, more), object(member<"b">(2)), member<"c">(3))) ==
          "{\"a\":1,\"laid_kg\":2,\"known\":true,\"b\":2,\"c\":3}\n");
    CHECK(line_of(object(given(std::optional<Mass>(), more), member<"c">(3))) == "{\"c\":3}\n");
}

TEST_CASE("a list is made of its elements, and of their numbers where that is asked for") {
    const std::vector<Length> lengths{in_si<Length>(1), in_si<Length>(2)};
    CHECK(line_of(object(member<"all">(list_of(lengths, [](Length one, std::size_t i) {
              return object(member<"number">(i + 1), member<"path_m">(one));
          })))) == "{\"all\":[{\"number\":1,\"path_m\":1},{\"number\":2,\"path_m\":2}]}\n");
    CHECK(line_of(object(member<"texts">(std::vector<std::string>{"a", "b"}))) ==
          "{\"texts\":[\"a\",\"b\"]}\n");
}
