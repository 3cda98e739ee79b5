#include <ringfill/weld/gas.hpp>

#include <algorithm>

#include <ringfill/units/factor.hpp>

namespace ringfill {

VolumeFlow gas_flow(const Procedure& procedure, const Filler& filler, const Gas& gas) {
    if (procedure.gas_flow)
        return *procedure.gas_flow;
    if (filler.form == FillerForm::rod)
        return in_si<VolumeFlow>(tungsten_flow_L_min * factor::litre / factor::minute);
    const double per_mm = filler.cored() ? cored_flow_L_min_per_mm : gas.flow_L_min_per_mm.value;
    return in_si<VolumeFlow>(per_mm * procedure.wire.value() * 1e3 * factor::litre / factor::minute);
}

Volume gas_volume(VolumeFlow flow, Time arc, double starts, Time before, Time after) {
    return flow * (arc + starts * (before + after)) * (1 + purge_and_leaks);
}

} // namespace ringfill
