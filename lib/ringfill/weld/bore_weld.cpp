#include <ringfill/weld/bore_weld.hpp>

#include <numbers>

#include <fmt/format.h>

#include <ringfill/weld/piece.hpp>

namespace ringfill {
namespace {

/// More rings a layer than this are refused: the bead is far too small for the bore.
constexpr double most_rings = 100'000;

[[noreturn]] void refuse(std::string path, std::string reason, std::string remedy) {
    throw Faulty(Origin::job, fault_at_path(std::move(path), {}, std::move(reason), std::move(remedy)));
}

/// The fault of a bore that its layers close before they reach the size to weld to.
[[noreturn]] void refuse_closed(const WornBore& bore, const Bead& bead) {
    refuse(bore.path,
           fmt::format("{} closes before it is built up, or takes far too many layers, with layers {} high",
                       bore.name, show(bead.layer_height(), UnitSystem::metric)),
           "choose a bead that fits the bore: another wire feed or travel");
}

std::vector<FacePad> lay_faces(const WornBore& bore, const Settings& settings) {
    std::vector<FacePad> pads;
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        if (const auto pad = lay_face(bore.faces[i], bore.stock, bore.overhang, settings.unscaled_bead,
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

BoreWeld weld_bore(const WornBore& bore, const Settings& settings, const Survey& survey, const Build& build) {
    const Procedure& procedure = *settings.procedure;
    BoreWeld weld{
        bore.name,        bore.procedure,      procedure.filler, bore.base, bore.count, procedure.torch_path,
        procedure.travel, settings.deposition, survey,           build};
    const auto layering =
        lay_layers(build.skim_radius, build.weld_to_radius, settings.unscaled_bead, settings.travel_limit);
    if (!layering ||
        (build.welded_length / (layering->scale * settings.unscaled_bead.pitch)).value() > most_rings)
        refuse_closed(bore, settings.unscaled_bead);
    weld.layering = *layering;
    weld.bead = scaled(settings.unscaled_bead, layering->scale);
    weld.layers = lay(bore, weld);
    weld.faces = lay_faces(bore, settings);
    for (const Groove& groove : bore.grooves)
        weld.grooves.push_back(
            fill_groove(groove, build.mean_radius, settings.unscaled_bead, settings.deposition));
    weld.metal = metal(bore, weld);
    if (weld.metal.pieces > most_pieces)
        refuse(procedure.path + ".wire",
               fmt::format("takes more than {} {} for {}", most_pieces,
                           settings.filler->form == FillerForm::stick ? "electrodes" : "rods", bore.name),
               "take thicker ones, and check the bore's size and wear");
    return weld;
}

std::vector<Layer> lay(const WornBore& bore, const BoreWeld& weld) {
    const Bead& bead = weld.bead;
    const auto radii = layer_radii(weld.build.mean_radius, bead.layer_height(), weld.layering.layers);
    if (static_cast<int>(radii.size()) <= weld.layering.layers)
        refuse_closed(bore, bead);
    const int rings = rings_a_layer(weld.build.welded_length, bead.pitch);
    std::vector<Layer> layers;
    for (std::size_t j = 0; j + 1 < radii.size(); ++j)
        layers.push_back(
            {pass_along(layer_path(weld.torch_path, rings, radii[j], bead.pitch), bead, weld.deposition),
             radii[j], radii[j + 1], rings, torch_speed(bead.travel, radii[j])});
    return layers;
}

std::vector<Fault> torch_faults(const BoreWeld& weld, const Torch& torch, UnitSystem units) {
    std::vector<Fault> faults;
    const auto add = [&](const char* field, Length limit, const char* what, Length laid, const char* remedy) {
        faults.push_back(fault_at_path(
            field, {},
            fmt::format("is {}, but {} is {} {}", show(limit, units), weld.name, what, show(laid, units)),
            remedy));
    };
    const Length built_up = 2.0 * weld.layering.end_radius;
    if (torch.smallest_bore && built_up < *torch.smallest_bore)
        add("torch.smallest_bore", *torch.smallest_bore, "built up to", built_up,
            "take a smaller torch head, or leave less stock");
    if (torch.reach && weld.build.welded_length > *torch.reach)
        add("torch.reach", *torch.reach, "welded over", weld.build.welded_length,
            "take a longer torch head, or weld the bore from both ends as two bores");
    return faults;
}

Metal metal(const WornBore& bore, const BoreWeld& weld) {
    const Deposition& deposition = weld.deposition;
    const Length r_m = weld.build.mean_radius;
    const Length r_f = weld.build.finish_radius;
    Metal sum;
    const auto add = [&](const Pass& pass, int starts) {
        sum.laid += pass.laid;
        sum.arc += pass.arc;
        sum.starts += starts;
    };
    for (const Layer& layer : weld.layers)
        add(layer, 1);
    sum.kept = deposition.density * std::numbers::pi * (r_m * r_m - r_f * r_f) * bore.length;
    sum.kept_share = (sum.kept / sum.laid).value();
    for (const FacePad& face : weld.faces)
        add(face, face.layers);
    for (const GrooveFill& groove : weld.grooves)
        add(groove, groove.is_filled() ? 1 : 0);
    if (deposition.piece) {
        sum.pieces = pieces_for(sum.laid, *deposition.piece);
        if (deposition.piece->form == FillerForm::stick)
            sum.starts = sum.pieces;
    }
    return with_breaks(sum, 0, deposition);
}

Metal with_breaks(Metal metal, int breaks, const Deposition& deposition) {
    metal.breaks += breaks;
    metal.starts += breaks;
    metal.wire = wire_for(metal.laid, metal.starts, deposition);
    return metal;
}

Mass wire_for(Mass laid, int starts, const Deposition& deposition) {
    if (deposition.piece)
        return static_cast<double>(pieces_for(laid, *deposition.piece)) * deposition.piece->mass;
    return laid / deposition.efficiency +
           static_cast<double>(starts) * in_si<Length>(trim_a_start) * deposition.linear_mass;
}

} // namespace ringfill
