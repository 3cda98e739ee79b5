#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/weld/bead.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>

namespace ringfill {

/// A pass laid so fast that its heat input falls under three quarters of that at the travel as set: fusion is
/// in doubt (section 9 of the computation). One caution a bore, for its fastest pass.
std::vector<Caution> fusion_cautions(const WornBore& bore, Speed travel_set, const Bead& as_laid,
                                     const std::vector<FacePad>& faces);

} // namespace ringfill
