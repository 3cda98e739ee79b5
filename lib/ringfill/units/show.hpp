#pragma once

#include <string>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// The units a person reads and writes bare lengths in.
enum class UnitSystem { metric, inch };

// A quantity as a person reads it, number and unit, rounded to what the trade reads off its instruments.
std::string show(Length length, UnitSystem system);          ///< 93.4 mm, 3.677 in
std::string show_wire(Length diameter, UnitSystem system);   ///< a wire diameter: 1.0 mm, 0.045 in
std::string show_pitch(Length pitch, UnitSystem system);     ///< a step of the torch: 4.75 mm, 0.187 in
std::string show_distance(Length length, UnitSystem system); ///< a path: 12.5 m, 41 ft
std::string show(Area area, UnitSystem system);              ///< 17.4 mm², 0.027 in²
std::string show(Volume volume, UnitSystem system);          ///< a gas volume: 1240 L, 43.8 ft³
std::string show(Mass mass,
                 UnitSystem system); ///< 5.62 kg, 12.39 lb; under a tenth of a kilogram 23 g, 0.8 oz
std::string show(MassFlow flow, UnitSystem system);             ///< 2.81 kg/h, 6.19 lb/h
std::string show(Speed speed, UnitSystem system);               ///< a travel: 350 mm/min, 13.8 in/min
std::string show_feed(Speed speed, UnitSystem system);          ///< a wire feed: 8.0 m/min, 315 in/min
std::string show_cutting_speed(Speed speed, UnitSystem system); ///< 60 m/min, 197 ft/min
/// A limit of size in the digits of show_fine: a lower one rounded up, an upper one rounded down.
std::string show_limit(Length limit, UnitSystem system, bool is_lower);
std::string show_fine(Length length, UnitSystem system);  ///< a finished size: 90.087 mm, 3.5467 in
std::string show_micro(Length length, UnitSystem system); ///< a roughness: 3.5 µm, 138 µin
std::string show(VolumeFlow flow, UnitSystem system);     ///< 15 L/min, 32 ft³/h
std::string show(Time time);                              ///< 45 s, 12 min, 1 h 25 min
std::string show(Angle angle);                            ///< 30°
std::string show_turning(Turning turning);                ///< 1.19 rev/min
std::string show(Current current);                        ///< 180 A
std::string show_minimum(Temperature temperature, UnitSystem system); ///< rounded up to 5 °C or 10 °F
std::string show_maximum(Temperature temperature, UnitSystem system); ///< rounded down likewise
std::string show(Temperature temperature, UnitSystem system);         ///< 4 °C, 39 °F
std::string show_exact(Temperature temperature, UnitSystem system);   ///< 4.1 °C, 39.4 °F; 4 °C when whole

} // namespace ringfill
