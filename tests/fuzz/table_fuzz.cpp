#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

void require(bool holds) {
    if (!holds)
        std::abort();
}

using Files = std::vector<Document>;

/// Every reader of a table, each on the product's own file and then on the text as a user's file over it.
const std::vector<std::function<void(const Document&)>>& readers() {
    static const Bibliography& sources = testing::shop().sources;
    const auto over = [](const char* name, auto read) {
        const Files own = table_files(Shelf{{RINGFILL_TABLES}}, name);
        return [own, read](const Document& file) {
            Files files = own;
            files.push_back(file);
            read(files);
        };
    };
    static const std::vector<std::function<void(const Document&)>> all = {
        over("packs.json", [](const Files& files) { (void)read_packs(files, sources); }),
        over("wear_parts.json", [](const Files& files) { (void)read_wear_parts(files, sources); }),
        over("gases.json", [](const Files& files) { (void)read_gases(files, sources); }),
        over("sticks.json", [](const Files& files) { (void)read_sticks(files, sources); }),
        over("standing_times.json", [](const Files& files) { (void)read_standing_times(files, sources); }),
        over("fuels.json", [](const Files& files) { (void)read_fuels(files, sources); }),
        over("cutting.json", [](const Files& files) { (void)read_cutting(files, sources); }),
        over("processes.json", [](const Files& files) { (void)read_processes(files, sources); }),
        over("suits.json", [](const Files& files) { (void)read_suits(files, sources); }),
        over("size_limits.json", [](const Files& files) { (void)read_size_steps(files, sources); }),
        over("cautions.json", [](const Files& files) { (void)read_cautions(files, sources); }),
        over("currencies.json", [](const Files& files) { (void)read_currencies(files, sources); }),
        over("sources.json", [](const Files& files) { (void)read_sources(files); }),
        over("families/steel.json", [](const Files& files) { (void)read_family("steel", files, sources); }),
        [](const Document& file) { (void)read_family("fuzzed", {file}, sources); }};
    return all;
}

} // namespace

/// Whatever a table holds, each reader takes it or refuses it as Faulty with reasons; nothing else is thrown.
/// The first byte chooses the reader.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const auto& reader = readers()[data[0] % readers().size()];
    try {
        reader(parse("table.json", std::string(reinterpret_cast<const char*>(data + 1), size - 1),
                     Origin::table));
    } catch (const Faulty& faulty) {
        require(faulty.origin() == Origin::table && !faulty.faults().empty());
        for (const Fault& fault : faulty.faults())
            require(!fault.reason.empty());
    }
    return 0;
}
