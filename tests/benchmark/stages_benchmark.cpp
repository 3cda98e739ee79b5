// What each stage of a plan costs, and the whole, against Boost.JSON alone parsing and printing the same
// bytes.
#define CATCH_CONFIG_ENABLE_BENCHMARKING
#include <catch2/catch.hpp>

#include <string>

#include <boost/json/parse.hpp>
#include <boost/json/serialize.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/plan.hpp>
#include <ringfill/report/json/json.hpp>

#include "simple_job.hpp"

namespace {

using namespace ringfill;
using ringfill::testing::simple_job;

const Shop& shop() {
    static const Shop read = read_shop({{RINGFILL_TABLES}}, {RINGFILL_PLUGIN_FOLDER});
    return read;
}

} // namespace

TEST_CASE("a simple job without a heat curve, against Boost.JSON parsing it and printing its plan") {
    const Document document = parse("job", simple_job, Origin::job);
    const Job job = read_job(document);
    const Plan planned = plan(job, shop());
    REQUIRE_FALSE(planned.bores.front().heat_balance);
    const Value tree = plan_document(planned);
    const std::string printed = write_json(tree);
    const boost::json::value same = boost::json::parse(printed);
    const std::string compact = boost::json::serialize(same);

    BENCHMARK("Boost.JSON: parse the job, print the plan") {
        return boost::json::parse(simple_job).as_object().size() + boost::json::serialize(same).size();
    };
    BENCHMARK("Boost.JSON: parse the plan, print it") {
        return boost::json::serialize(boost::json::parse(compact)).size();
    };
    BENCHMARK("parse the job, with places") {
        return parse("job", simple_job, Origin::job).root.end;
    };
    BENCHMARK("read the job") {
        return read_job(document).bores.size();
    };
    BENCHMARK("plan it") {
        return plan(job, shop()).bores.size();
    };
    BENCHMARK("its plan as a tree") {
        return plan_document(planned).end;
    };
    BENCHMARK("print the tree") {
        return write_json(tree).size();
    };
    BENCHMARK("its plan as a line") {
        return plan_line(planned).size();
    };
    BENCHMARK("all of it, from text to text") {
        return plan_line(plan(read_job(parse("job", simple_job, Origin::job)), shop())).size();
    };
}
