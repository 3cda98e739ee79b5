// Every electrode and wire has a usual current, or the plan says that none is known.

#include <catch2/catch.hpp>

#include <ringfill/weld/setting_notes.hpp>

#include "plan/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines notes_of_filler(const std::string& filler, const std::string& as_set) {
    const Job job = job_with(fmt::format(R"("filler": "{}", {}, "travel": "200 mm/min")", filler, as_set));
    std::vector<Fault> faults;
    return setting_notes(settings(job.procedures.front(), shop(), faults).value(), job.units);
}

} // namespace

TEST_CASE("an electrode far over its usual current is noted") {
    CHECK(notes_of_filler("cast_iron/ENiFe-CI", R"("wire": "3.2 mm", "current": "300 A")").front() ==
          "procedure main: a current of 300 A is outside the usual 70 A to 120 A for cast_iron/ENiFe-CI "
          "[practice].");
}

TEST_CASE("every electrode has a usual current in every diameter") {
    for (const Family& family : shop().registry.families())
        for (const Filler& filler : family.fillers)
            for (const WireSize& size : filler.sizes)
                if (filler.form == FillerForm::stick) {
                    INFO(family.name << '/' << filler.name << ' ' << size.name);
                    CHECK(size.window.current);
                }
}

TEST_CASE("a wire without a known window is told so") {
    CHECK(
        notes_of_filler("steel/ER70S-3",
                        R"("wire": "1.321 mm", "gas": "M21", "wire_feed": "6 m/min", "current": "900 A")") ==
        Lines{"procedure main: no usual current is known here for steel/ER70S-3 of 1.32 mm, so 900 A is not "
              "judged; see what its maker prints."});
}
