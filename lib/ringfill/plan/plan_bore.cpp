#include <ringfill/plan/plan_bore.hpp>

#include <fmt/format.h>

#include <ringfill/weld/piece.hpp>
#include <ringfill/weld/ring_closes.hpp>

namespace ringfill {
namespace {

/// More rings a layer than this are refused: the bead is far too small for the bore.
constexpr double most_rings = 100'000;

std::vector<FacePad> lay_faces(const WornBore& bore, const Settings& settings) {
    std::vector<FacePad> pads;
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        if (const auto pad = lay_face(bore.faces[i], bore.stock, bore.overhang, settings.unscaled,
                                      settings.travel_limit, settings.deposition))
            pads.push_back(*pad);
        else
            faults.push_back(fault_at_path(
                element_path(bore.path + ".faces", i) + ".inner", {},
                "leaves no room for the overhang inside it, or the bead is far too small for the pad",
                "check the inner diameter, the overhang and the wire feed"));
    }
    refuse_if_any(Origin::job, faults);
    return pads;
}

} // namespace

BorePlan plan_bore(const WornBore& bore, const Settings& settings) {
    BorePlan plan;
    plan.name = bore.name;
    plan.count = bore.count;
    plan.procedure = bore.procedure;
    plan.filler = settings.procedure->filler;
    plan.torch_path = settings.procedure->torch_path;
    plan.travel_set = settings.procedure->travel;
    plan.deposition = settings.deposition;
    plan.survey = survey(bore.worn, bore.length);
    if (plan.survey.smallest.radius <= Length()) // else the bore would be worn inside out
        throw Faulty(Origin::job,
                     fault_at_path(bore.path + ".worn", {},
                                   fmt::format("has readings of {} so far apart that a smooth curve "
                                               "through them passes the target axis",
                                               bore.name),
                                   "check the readings for a slip"));
    plan.build = prepare(bore, plan.survey);

    const auto layering = lay_layers(plan.build.skim_radius, plan.build.weld_to_radius, settings.unscaled,
                                     settings.travel_limit);
    if (!layering ||
        (plan.build.welded_length / (layering->scale * settings.unscaled.pitch)).value() > most_rings)
        throw Faulty(Origin::job, ring_closes(bore, settings.unscaled));
    plan.layering = *layering;
    plan.bead = scaled(settings.unscaled, layering->scale);
    plan.layers =
        lay(bore, plan.build, plan.bead, *layering, settings.procedure->torch_path, settings.deposition);

    plan.faces = lay_faces(bore, settings);
    for (const Groove& groove : bore.grooves)
        plan.grooves.push_back(
            fill_groove(groove, plan.build.mean_radius, settings.unscaled, settings.deposition));
    plan.metal = metal(bore, plan.build, plan.layers, plan.faces, plan.grooves, settings.deposition);
    if (plan.metal.pieces > most_pieces)
        throw Faulty(
            Origin::job,
            fault_at_path(
                settings.procedure->path + ".wire", {},
                fmt::format("takes more than {} {} for {}", most_pieces,
                            settings.deposition.piece->form == FillerForm::stick ? "electrodes" : "rods",
                            bore.name),
                "take thicker ones, and check the bore's size and wear"));
    return plan;
}

void plan_heat(BorePlan& plan, const WornBore& bore, const Settings& settings, const Site& site,
               const Registry& registry, const Base& base) {
    const HeatSettings heat{settings.procedure, settings.filler, settings.deposition.current, plan.bead};
    plan.heat = bore_heat(bore, heat, site, family_of(registry, bore.base), base, plan.build, plan.faces,
                          plan.grooves);
}

} // namespace ringfill
