#pragma once

#include <string>
#include <vector>

#include <ringfill/document/field.hpp>
#include <ringfill/document/value.hpp>
#include <ringfill/material/shop.hpp>

#include "identity/draw.hpp"

namespace ringfill::testing {

/// What a job may name of what stands in the shop.
struct ShopNames {
    std::vector<std::string> fillers;
    std::vector<std::string> bases;
    std::vector<std::string> gases;
    std::vector<std::string> currencies;
};
ShopNames names_in(const Shop& shop);

/// The value that the description shows in a starter job.
Value sample_of(const Field& field);
/// Whether that sample is whole.
bool has_sample(const Field& field);

/// A value for a field: at an end of its range, just inside or just outside of it, far from what stands there
/// or close to it, in any of its units; for a list also with the fewest and the most elements.
/// @param present what stands there; may be null.
Value edge_value(const Field& field, const Value* present, const ShopNames& names, Draw& draw);

/// A length as text, in mm.
Value length_text(double mm);

} // namespace ringfill::testing
