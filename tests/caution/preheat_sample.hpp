#pragma once

#include <string>

#include <ringfill/units/metric.hpp>

#include "caution/told.hpp"

namespace ringfill::testing {

inline AskedTemperature asked(double degrees, const std::string& by) {
    return {celsius(degrees), by, "practice", {}, {}};
}

/// A bore of known steel, 150 to 250 degC, everything known.
struct PreheatSample {
    WornBore bore;
    Procedure procedure;
    BoreHeat heat;
    Build build;

    PreheatSample() {
        bore.name = "pin";
        bore.base = "steel/C45";
        procedure.filler = "steel/ER70S-6";
        heat.structure = "ferritic";
        heat.wall = millimetres(30);
        build.wall = millimetres(30);
        heat.hydrogen_ml_100g = Sourced<double>{5, "practice"};
        heat.laid = {{"bore", in_si<EnergyPerLength>(5e5)}};
        heat.preheat.state = PreheatState::figure;
        heat.preheat.minimum = asked(150, "a table");
        heat.preheat.interpass_max = asked(250, "a document");
    }

    void method(const std::string& name, double degrees, bool applies, bool in_range = true) {
        PreheatMethod made;
        made.name = name;
        made.asks = Asks::minimum;
        made.minimum = celsius(degrees);
        made.counts = made.minimum;
        made.applies = applies;
        made.second_opinion = !applies;
        made.in_range = in_range;
        made.source = "practice";
        heat.preheat.methods.push_back(made);
    }

    Lines stops() const { return said_by(heat_stops); }
    Lines cautions() const { return said_by(preheat_rules); }

  private:
    Lines said_by(void (*rule)(CautionList&, const RuledBore&)) const {
        BorePlan plan;
        plan.heat = heat;
        plan.build = build;
        return told_by(rule, bore, plan, UnitSystem::metric, procedure);
    }
};

} // namespace ringfill::testing
