#include <catch2/catch.hpp>

#include <ringfill/weld/bore_weld.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// What is said of a torch in a bore welded to 86 mm over 106 mm.
std::vector<std::string> faults_of(const Torch& torch, UnitSystem units = UnitSystem::metric) {
    BoreWeld weld;
    weld.name = "arm root";
    weld.build.welded_length = mm(106);
    weld.layering.end_radius = mm(43);
    std::vector<std::string> lines;
    for (const Fault& fault : torch_faults(weld, torch, units))
        lines.push_back(to_string(fault));
    return lines;
}

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("a torch that is not described fits") {
    CHECK(faults_of({}).empty());
}

TEST_CASE("a torch must go into the bore when it is built up") {
    CHECK(faults_of({mm(85.99), {}}).empty());
    CHECK(faults_of({mm(86.5), {}}) == Lines{"torch.smallest_bore: is 86.5 mm, but arm root is built up to "
                                             "86.0 mm; take a smaller torch head, or leave "
                                             "less stock"});
}

TEST_CASE("a torch must reach over the welded length") {
    CHECK(faults_of({{}, mm(106)}).empty());
    CHECK(faults_of({{}, mm(105)}) == Lines{"torch.reach: is 105.0 mm, but arm root is welded over 106.0 mm; "
                                            "take a longer torch head, or weld the bore "
                                            "from both ends as two bores"});
}

TEST_CASE("both faults of a torch come at once, in the job's units") {
    CHECK(faults_of({mm(101.6), mm(101.6)}, UnitSystem::inch) ==
          Lines{"torch.smallest_bore: is 4.000 in, but arm root is built up to 3.386 in; take a smaller "
                "torch head, or leave "
                "less stock",
                "torch.reach: is 4.000 in, but arm root is welded over 4.173 in; take a longer torch head, "
                "or weld the bore "
                "from both ends as two bores"});
}
