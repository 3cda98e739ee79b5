#pragma once

#include <string>

namespace ringfill::testing {

/// A job with every field set, to a value that no field falls back to. The worn surfaces have three forms, so
/// there are three bores.
inline const std::string full_job = R"json({
  "format": "ringfill-job/1",
  "title": "Bucket ears, peat cutter 12",
  "units": "inch",
  "site": { "ambient": "41 degF", "wet": true, "indoors": true, "enclosed": true, "room_volume": "1000 ft3",
            "ceiling": 120, "near": ["tyre", "fuel"], "coating": "zinc", "residue": ["oil", "dust"],
            "crew": ["implant"], "fire_rules": "longest" },
  "procedures": {
    "ears": {
      "filler": "steel/ER70S-6", "wire": "0.045 in", "spools": ["33 lb", "5 kg"], "gas": "C1",
      "wire_feed": "300 in/min", "current": "210 A", "deposition_rate": "6 lb/h", "dilution": 0.15, "voltage": "24 V", "travel": "12 in/min",
      "travel_max": "15 in/min", "transfer": "spray", "path": "helix", "efficiency": 0.9, "bead_ratio": 3.5,
      "pitch_ratio": 0.7, "gas_flow": "30 ft3/h", "step_over": "12 s", "gas_before": "3 s", "gas_after": "4 s", "stick_out": "1/2 in", "hydrogen_ml_100g": 4.5,
      "deposit": { "C": 0.06, "Mn": 1.1 },
      "approved": { "reference": "W-7", "preheat_min": "300 degF", "interpass_max": "260 degC",
                    "heat_input": ["10 kJ/in", "0.9 kJ/mm"],
                    "post_heat": { "temperature": "250 degC", "time": "1 h 30 min" }, "confirmed": true }
    }
  },
  "bores": [
    {
      "name": "left ear", "count": 4, "line": "ears", "axis": "vertical", "base": "steel/1045",
      "composition": { "C": 0.44, "Mn": 0.7 }, "carbon_equivalent": 0.58, "bought_after": 2010,
      "product_thickness": "2 in", "part_mass": "900 lb", "magnetic": true, "finish_diameter": "3-1/2 in", "size_class": "H8", "length": 4,
      "boss_diameter": "7 in", "attached": [{ "thickness": "1 in", "depth": "1 in", "reach": "20 in", "wrapped": true }, { "thickness": "20 mm" }],
      "carry_off": "2.5 W/K", "heat_wall": "1.5 in",
      "worn": { "diameter": "3.7 in", "offset": "10 thou", "offset_clock": "90 deg" },
      "skim": "20 thou", "stock": "1/16 in", "overhang": "1/8 in", "procedure": "ears",
      "faces": [{ "inner": "3.5 in", "outer": "6 in", "build": "1/8 in" }],
      "grooves": [{ "diameter": "4 in", "width": "1/4 in" }],
      "holes": [{ "diameter": "3/8 in", "depth": "2 in", "clock": "180 deg", "other_end": "fitting" }]
    },
    {
      "name": "right ear", "base": "steel/1045", "finish_diameter": "3.5 in", "length": "4 in", "skim": "none",
      "worn": { "stations": [{ "depth": "1 in", "radii": ["1.85 in", "1.84 in", "1.86 in"] },
                             { "depth": "3 in", "radii": ["1.83 in", "1.84 in", "1.85 in"] }] }
    },
    {
      "name": "link", "base": "steel/1045", "finish_diameter": "3.5 in", "size_limits": ["3.5 in", "3.504 in"], "length": "4 in",
      "worn": { "stations": [{ "depth": "1 in", "diameters": ["3.7 in", "3.72 in"] }], "offset": "5 thou",
                "offset_clock": "45 deg" }
    }
  ],
  "torch": { "smallest_bore": "1.5 in", "reach": "12 in" },
  "heater": { "kind": "acetylene", "power": "20 kW", "efficiency": 0.3, "stays": false, "skin": "300 degC", "start_delay": "2 min" },
  "start": "6:30", "working_day": "9 h", "blanket": "25 mm", "breaks": "30 min", "change_over": "15 min",
  "boring": { "bar_speeds": ["80 rev/min", "2 rev/s"], "tool": "HSS", "cutting_speed": "200 ft/min", "feed": "5 thou",
              "rough_cut": "0.06 in", "edge_life": "25 min", "stroke": "14 in" },
  "reserve": "15 %",
  "welding_rules": "ASME B31.3-2014",
  "prices": { "currency": "EUR", "labour_hour": 85,
              "labour": { "set_up": 81, "heating": 82, "welding": 83, "waiting": 84, "idle": 40, "boring": 85.5, "clean_up": 86,
                          "testing": 87, "travel": 88 },
              "watch_hour": 40.25, "wire_kg": { "steel/ER70S-6": 4.2 }, "packs": { "CO2 cylinder": 31.50 },
              "materials": "use", "power_kwh": 0.3125, "fuel_litre": 1.7,
              "travel": { "distance": 56.5, "in": "miles", "time": "1 h 15 min", "trips": 3 }, "drive": 0.9,
              "extras": { "lodging": 240 }, "contingency": "5 %", "markup": "12.5 %", "tax": "8.875 %" }
})json";

} // namespace ringfill::testing
