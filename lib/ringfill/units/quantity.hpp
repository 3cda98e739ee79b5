#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/physical_dimensions/specific_heat_capacity.hpp>
#include <boost/units/physical_dimensions/thermal_conductivity.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/current.hpp>
#include <boost/units/systems/si/dimensionless.hpp>
#include <boost/units/systems/si/electric_potential.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/frequency.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/power.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/velocity.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace ringfill {

namespace units = boost::units;
namespace si = boost::units::si;

// Every quantity inside the library, in SI. A quantity is eight bytes; a sum of a length and a mass does not
// compile.
using Length = units::quantity<si::length>;
using Area = units::quantity<si::area>;
using Volume = units::quantity<si::volume>;
using Mass = units::quantity<si::mass>;
using Time = units::quantity<si::time>;
using Speed = units::quantity<si::velocity>;
using Density = units::quantity<si::mass_density>;
using LinearMass = units::quantity<units::divide_typeof_helper<si::mass, si::length>::type>;
using MassFlow = units::quantity<units::divide_typeof_helper<si::mass, si::time>::type>;
using VolumeFlow = units::quantity<units::divide_typeof_helper<si::volume, si::time>::type>;
using Current = units::quantity<si::current>;
using Voltage = units::quantity<si::electric_potential>;
using Power = units::quantity<si::power>;
using Energy = units::quantity<si::energy>;
using SpecificHeat = units::quantity<units::unit<units::specific_heat_capacity_dimension, si::system>>;
using Conductivity = units::quantity<units::unit<units::thermal_conductivity_dimension, si::system>>;
using Conductance = units::quantity<units::divide_typeof_helper<si::power, si::temperature>::type>;
using EnergyPerLength = units::quantity<si::force>; ///< J/m, which is the newton
using Angle = units::quantity<si::plane_angle>;
using Turning = units::quantity<si::frequency>; ///< revolutions a second
using Ratio = units::quantity<si::dimensionless>;
using Temperature =
    units::quantity<units::absolute<si::temperature>>; ///< a point on the scale, never a difference

/// A quantity from its value in the SI unit of its kind.
template <class Quantity>
constexpr Quantity in_si(double value) noexcept {
    return Quantity::from_value(value);
}

constexpr Length millimetres(double value) noexcept {
    return in_si<Length>(value * 1e-3);
}

} // namespace ringfill
