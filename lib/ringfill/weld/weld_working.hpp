#pragma once

#include <vector>

#include <ringfill/weld/metal.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What the workings of a bore's weld start from.
struct WeldFigures {
    const WornBore& bore;
    const Build& build;
    const Deposition& deposition;
    const Bead& unscaled; ///< at κ = 1
    const Bead& bead;     ///< as laid
    const Layering& layering;
    double bead_ratio;
    double pitch_ratio;
    TorchPath torch_path;
    Speed travel_limit;
    std::string bead_ratio_source;
};

/// How the bead was reached (bead.*) and the extra stock it leaves (build.extra_stock_mm).
std::vector<Working> bead_working(const WeldFigures& weld);

/// How metal and time of one pass follow from its way (laid_kg, arc_s).
std::vector<Working> pass_working(const WeldFigures& weld, const Bead& bead, Length path, Mass laid,
                                  Time arc);

/// How each layer was reached (layers[i].*).
std::vector<Working> layers_working(const WeldFigures& weld, const std::vector<Layer>& layers);

/// How each face and groove was reached (faces[i].*, grooves[i].*).
std::vector<Working> faces_working(const WeldFigures& weld, const std::vector<FacePad>& faces);
std::vector<Working> grooves_working(const WeldFigures& weld, const std::vector<GrooveFill>& grooves);

/// How metal, wire and time were reached (metal.*).
std::vector<Working> metal_working(const WeldFigures& weld, const std::vector<Layer>& layers,
                                   const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
                                   const Metal& metal);

} // namespace ringfill
