#include <ringfill/weld/weld_working.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {

std::vector<Working> pass_working(const WeldFigures& weld, const Bead& bead, Length path, Mass laid,
                                  Time arc) {
    const Input way{"l", mm(path), "mm"};
    return {{"laid_kg",
             "rho*A*l*1e-9",
             {{"rho", weld.deposition.density.value(), "kg/m3"}, {"A", mm2(bead.section), "mm2"}, way},
             laid.value(),
             "kg",
             "own"},
            {"arc_s", "60*l/v", {way, {"v", mm_min(bead.travel), "mm/min"}}, arc.value(), "s", "own"}};
}

} // namespace ringfill
