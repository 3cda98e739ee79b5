#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/prices.hpp>
#include <ringfill/job/procedure.hpp>
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
    Workday workday;
    double reserve = 0; ///< share of each need taken on top
    Prices prices;
    std::vector<Assumed> assumed; ///< values the file left out
};

/// The procedure of a bore. The name is known: the reader has checked it.
const Procedure& procedure_of(const Job& job, const WornBore& bore);

} // namespace ringfill
