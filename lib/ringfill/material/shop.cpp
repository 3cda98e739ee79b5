#include <ringfill/material/shop.hpp>

namespace ringfill {

Shop read_shop(const Shelf& shelf, const std::vector<std::string>& plugin_folders) {
    Shop shop;
    refuse_missing_folders(shelf);
    refuse_unread_files(shelf);
    const auto files_of = [&](const std::string& name) {
        std::vector<Document> files = table_files(shelf, name);
        append(shop.replaced, replaced_rows(files));
        return files;
    };
    shop.sources = read_sources(table_files(shelf, "sources.json"));
    shop.registry = Registry(shelf, plugin_folders, shop.sources);
    shop.packs = read_packs(files_of("packs.json"), shop.sources);
    shop.wear_parts = read_wear_parts(files_of("wear_parts.json"), shop.sources);
    shop.gases = read_gases(files_of("gases.json"), shop.sources);
    shop.sticks = read_sticks(files_of("sticks.json"), shop.sources);
    shop.standing_times = read_standing_times(files_of("standing_times.json"), shop.sources);
    shop.fuels = read_fuels(files_of("fuels.json"), shop.sources);
    shop.cutting = read_cutting(files_of("cutting.json"), shop.sources);
    shop.processes = read_processes(files_of("processes.json"), shop.sources);
    shop.suits = read_suits(files_of("suits.json"), shop.sources);
    shop.size_steps = read_size_steps(files_of("size_limits.json"), shop.sources);
    shop.cautions = read_cautions(files_of("cautions.json"), shop.sources);
    shop.currencies = read_currencies(files_of("currencies.json"), shop.sources);
    return shop;
}

std::vector<ReplacedRow> replaced_rows(const Shop& shop) {
    std::vector<ReplacedRow> all = shop.replaced;
    if (shop.registry.has_own())
        for (const Family& family : shop.registry.families())
            append(all, family.replaced);
    return all;
}

} // namespace ringfill
