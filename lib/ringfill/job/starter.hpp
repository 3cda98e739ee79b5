#pragma once

#include <string>

#include <ringfill/units/show.hpp>

namespace ringfill {

/// A job file to begin from, made from the description of the format: one bore, every required field with a
/// value and every optional one shown once in a comment. It plans as it stands.
std::string starter_job(UnitSystem units);

} // namespace ringfill
