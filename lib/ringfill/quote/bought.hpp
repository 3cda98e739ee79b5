#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/job/prices.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// "wire steel/ER70S-6 1.0 mm, 5 kg spool": a pack of a need, by its full name.
std::string with_pack(const Need& need, const PackCount& pack);

/// Everything that is bought for a need, by what it is called.
std::vector<std::string> bought(const Need& need);

/// Whether a name of a price names anything that is bought for a need.
bool is_bought_by_name(const Need& need, std::string_view name);

/// Whether anything that is bought for a need has a price by its name.
bool has_price(const Need& need, const NamedPrices& prices);

/// Whether a need comes among the materials: what is used up, and a tool that has a price.
bool is_material(const Need& need, const NamedPrices& prices);

/// "steel/ER70S-6", "M21", "propane": the filler, gas or fuel that a need is of; empty: it is something else.
std::string substance_of(const Need& need);

} // namespace ringfill
