#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/json/json.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

/// A fault of a job says where, what and what to do, in words that a terminal can show.
void check_faults(const Faulty& faulty) {
    if (faulty.origin() != Origin::job || faulty.faults().empty() || faulty.faults().size() > most_faults + 1)
        std::abort();
    for (const Fault& fault : faulty.faults())
        if (fault.reason.empty())
            std::abort();
}

} // namespace

/// Whatever the file holds, it is planned with finite numbers alone, or refused as Faulty; nothing else is
/// thrown.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const Shop& ready = testing::shop();
    try {
        const Document document =
            parse("job.json", std::string(reinterpret_cast<const char*>(data), size), Origin::job);
        const Plan planned = plan(read_job(document), ready);
        if (write_json(plan_document(planned)).empty())
            std::abort();
    } catch (const Faulty& faulty) {
        check_faults(faulty);
    }
    return 0;
}
