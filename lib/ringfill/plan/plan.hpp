#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/plan/day_plan.hpp>
#include <ringfill/plan/progress.hpp>
#include <ringfill/plan/shop.hpp>
#include <ringfill/quote/quote.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/weld/layer_metal.hpp>
#include <ringfill/weld/metal.hpp>

namespace ringfill {

/// Everything worked out for one bore; each figure is for one of its count.
struct BorePlan {
    std::string name;
    std::string procedure;
    std::string filler;
    std::string base;
    int count = 1;
    TorchPath torch_path = TorchPath::ring;
    Speed travel_set; ///< as the job gives it
    Survey survey;
    Build build;
    Deposition deposition;
    Bead bead; ///< as laid
    Layering layering;
    std::vector<Layer> layers;
    std::vector<FacePad> faces;
    std::vector<GrooveFill> grooves;
    Metal metal;
    std::optional<Suit> suit;        ///< the rule on filler and base metal; nothing: no table has one
    std::vector<std::string> buffer; ///< fillers of the buffer that it asks for, family/name
    std::optional<Sourced<std::pair<double, double>>>
        efficiency_range; ///< usual of the filler or its process
    std::optional<Dilution> dilution;
    std::optional<LayerMetals> layer_metals; ///< of austenitic stainless layers
    std::string
        no_ferrite; ///< why stainless layers have none told, the end of a sentence; empty: nothing to tell
    BoreHeat heat;
    std::optional<HeatBalance> heat_balance;
    std::string no_balance; ///< why there is none, the end of a sentence
    BoringPlan boring;
    std::vector<Working> boring_working; ///< until it stands among the plan's
};

/// How one of several alike is told from the others: "arm root 2"; alone it has the name of its bore.
std::string piece_name(const BorePlan& bore, int piece);

/// All bores together, counts applied.
struct Totals {
    Mass laid;
    Mass wire;
    Mass piece_mass; ///< of electrodes and rods
    std::int64_t pieces = 0;
    Time arc;
    Volume gas;
};

/// The whole of what is planned for a job.
struct Plan {
    std::string title;
    UnitSystem units = UnitSystem::metric;
    double reserve = 0;
    std::vector<BorePlan> bores;
    Totals totals;
    std::optional<DayPlan> day; ///< nothing: some bore has no heat balance, the notes say which
    FireWatch fire_watch;
    std::vector<Need> take;
    std::optional<Quote> quote;     ///< nothing: the job gives no currency
    std::vector<Caution> cautions;  ///< those that apply, then those the job leaves open; by time of the work
    std::vector<std::string> notes; ///< what is out of the usual, and what is not part of this plan
    std::vector<Working> working;   ///< how every figure was reached
    std::vector<Assumed> assumed;   ///< values that the job left out
    Bibliography sources;           ///< that the cautions cite
};

/// Plans a job with what stands ready in the shop. Pure: the same job and shop give the same plan.
/// Throws Faulty (Origin::job) with the faults of all bores and procedures; their places have paths into the
/// job only, see locate().
/// @param progress is told how far it is.
Plan plan(const Job& job, const Shop& shop, const Progress& progress = {});

} // namespace ringfill
