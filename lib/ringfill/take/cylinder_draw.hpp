#pragma once

#include <ringfill/table/packs.hpp>

namespace ringfill {

/// What a cylinder of propane gives steadily, half full, in air of a temperature [kg/s]. A cylinder of 100 lb
/// with 50 lb in it gives 64, 94, 125, 154 and 167 thousand Btu/h at -18, -7, 4, 16 and 21 degC, of 21,591
/// Btu/lb [a gas-burner maker's page and a generator maker's manual, identical; read]. Straight lines
/// between; colder, straight to nothing at -42 degC, where propane boils [memory]; warmer, no more. Other
/// sizes by their wetted wall, (content/45 kg)^(2/3) [own choice].
MassFlow propane_draw(Mass content, Temperature air);

/// What a cylinder of fuel gives steadily: its own row where it has one; without one propane as above, and
/// acetylene a seventh of its content an hour.
/// @param air of the site; below freezing a row of a fuel that burns in air counts half, frosted over [common
/// practice, no source].
MassFlow cylinder_draw(const FuelPack& pack, Temperature air);

/// The fuel whose cylinders frost.
inline constexpr std::string_view frosting_fuel = "propane";

} // namespace ringfill
