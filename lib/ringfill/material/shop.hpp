#pragma once

#include <vector>

#include <ringfill/material/registry.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/table/currencies.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/table/fuels.hpp>
#include <ringfill/table/gases.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/processes.hpp>
#include <ringfill/table/replaced.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/size_limits.hpp>
#include <ringfill/table/standing_times.hpp>
#include <ringfill/table/sticks.hpp>
#include <ringfill/table/suits.hpp>
#include <ringfill/table/wear_parts.hpp>

namespace ringfill {

/// What stands ready whatever the job: the material families and the shop's tables.
struct Shop {
    Bibliography sources;
    Registry registry;
    Packs packs;
    WearParts wear_parts;
    std::vector<Gas> gases;
    std::vector<Stick> sticks;
    Fuels fuels;
    std::vector<StepTime> standing_times;
    Cutting cutting;
    Processes processes;
    std::vector<Suit> suits; ///< the common rules; those of a family stand with it
    std::vector<SizeStep> size_steps;
    CautionTable cautions;
    std::vector<Currency> currencies;
    std::vector<ReplacedRow> replaced =
        {}; ///< of these tables, by those of the user; families have their own
};

/// Reads every table on the shelf but those of the families, once; a family and its plugin are read when a
/// job first names it (see Registry). Throws Faulty (Origin::table, Origin::file).
Shop read_shop(const Shelf& shelf, const std::vector<std::string>& plugin_folders);

/// Every row that tables of the user replace, those of the families included; with such tables it reads all
/// families.
std::vector<ReplacedRow> replaced_rows(const Shop& shop);

} // namespace ringfill
