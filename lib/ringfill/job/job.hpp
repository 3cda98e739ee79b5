#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/prices.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/job/typed_oddly.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// A whole job as its file says it, every value in range and every name inside it known.
struct Job {
    std::string title;
    UnitSystem units = UnitSystem::metric;
    Site site;
    std::vector<Procedure> procedures;
    std::vector<WornBore> bores;
    Torch torch;
    std::optional<Heater> heater;
    BoringBar boring;
    Time day_start; ///< from midnight
    Time working_day;
    Time breaks = in_si<Time>(45 * 60); ///< a day, less than the working day
    Length blanket = millimetres(25);   ///< thickness, of ceramic fibre
    Time change_over;                   ///< going to another bore of a line and back
    Ratio reserve;                      ///< share of each need taken on top
    Prices prices;
    std::optional<std::string> welding_rules; ///< the document that the job works by
    std::vector<Assumed> assumed;             ///< values the file left out
    std::vector<TypedOddly> typed_oddly;      ///< spellings that look like slips
};

} // namespace ringfill
