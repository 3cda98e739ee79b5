#include <catch2/catch.hpp>

#include <filesystem>

#include <ringfill/document/whole_file.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

std::vector<Plan> demo_plans() {
    std::vector<Plan> plans;
    for (const auto& file : std::filesystem::directory_iterator(std::string(RINGFILL_ROOT) + "/cli/demo"))
        if (file.path().extension() == ".json")
            plans.push_back(
                plan(testing::job_from(read_whole(file.path().string(), job_file_limit)), testing::shop()));
    return plans;
}

/// What a symbol of a working of a line stands for, if it is one of the line's own figures.
std::optional<double> own_figure(const Need& line, const std::string& symbol) {
    if (symbol == "need")
        return line.need;
    if (symbol == "reserve")
        return line.reserve;
    if (symbol == "supplied")
        return line.supplied;
    return std::nullopt;
}

} // namespace

// A formula such as 0*need holds whatever its input: here the input itself is compared.
TEST_CASE("the workings of a line are fed with the figures of the line") {
    std::size_t compared = 0;
    for (const Plan& plan : demo_plans())
        for (const Need& line : plan.take)
            for (const Working& work : line.working)
                for (const Input& input : work.inputs)
                    if (const auto expected = own_figure(line, input.symbol)) {
                        INFO(line.item << ", " << work.figure << ", " << input.symbol);
                        REQUIRE(input.values().size() == 1);
                        CHECK(input.values()[0] == *expected);
                        ++compared;
                    }
    CHECK(compared > 100);
}
