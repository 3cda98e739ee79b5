#include <ringfill/material/shop.hpp>

namespace ringfill {

Shop read_shop(const Shelf& shelf, const std::vector<std::string>& plugin_folders) {
    Shop shop;
    refuse_missing_folders(shelf);
    shop.sources = read_sources(table_files(shelf, "sources.json"));
    shop.registry = Registry(shelf, plugin_folders, shop.sources);
    shop.packs = read_packs(table_files(shelf, "packs.json"), shop.sources);
    shop.wear_parts = read_wear_parts(table_files(shelf, "wear_parts.json"), shop.sources);
    shop.gases = read_gases(table_files(shelf, "gases.json"), shop.sources);
    shop.sticks = read_sticks(table_files(shelf, "sticks.json"), shop.sources);
    shop.standing_times = read_standing_times(table_files(shelf, "standing_times.json"), shop.sources);
    shop.fuels = read_fuels(table_files(shelf, "fuels.json"), shop.sources);
    shop.cutting = read_cutting(table_files(shelf, "cutting.json"), shop.sources);
    shop.processes = read_processes(table_files(shelf, "processes.json"), shop.sources);
    shop.suits = read_suits(table_files(shelf, "suits.json"), shop.sources);
    shop.size_steps = read_size_steps(table_files(shelf, "size_limits.json"), shop.sources);
    shop.cautions = read_cautions(table_files(shelf, "cautions.json"), shop.sources);
    shop.currencies = read_currencies(table_files(shelf, "currencies.json"), shop.sources);
    return shop;
}

} // namespace ringfill
