#include <catch2/catch.hpp>

#include <filesystem>

#include <fmt/format.h>

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

/// The workings of a plan that are of a line to take.
std::vector<Working> workings_of_line(const Plan& plan, std::size_t line) {
    std::vector<Working> found;
    for (const Working& work : plan.working)
        if (work.figure.starts_with(fmt::format("take[{}].", line)))
            found.push_back(work);
    return found;
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
        for (std::size_t i = 0; i < plan.take.size(); ++i)
            for (const Working& work : workings_of_line(plan, i))
                for (const Input& input : work.inputs)
                    if (const auto expected = own_figure(plan.take[i], input.symbol)) {
                        INFO(need_id(plan.take[i]) << ", " << work.figure << ", " << input.symbol);
                        REQUIRE(input.values().size() == 1);
                        CHECK(input.values()[0] == *expected);
                        ++compared;
                    }
    CHECK(compared > 100);
}
