#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/table/processes.hpp>
#include <ringfill/weld/layers.hpp>

namespace ringfill {

/// Percent by mass, by element.
using Shares = std::vector<std::pair<std::string, double>>;

/// The shares that a table prints, without their sources.
Shares plain_shares(const Composition& composition);

/// Adds the elements of a table that shares do not have yet.
void fill_up(Shares& shares, const Composition& composition);

/// The percentage of an element, 0 where it is not listed [%].
double share_of(const Shares& shares, std::string_view element);

/// A layer laid over another: dilution times what lies under and the rest filler, element by element; an
/// element that one of the two does not list counts 0 there. [C_n = D C_(n-1) + (1 - D) C_f, the definition
/// of dilution]
Shares layer_over(const Shares& under, const Shares& filler, double dilution);

/// Share of the base metal left in a layer when each melts in the same share of the one before, Dⁿ.
double base_left(double dilution, int layer);

/// Layers until no more than a share of the base metal is left, at least 1. Dilution and limit over 0 and
/// under 1.
int layers_to_reach(double dilution, double limit);

/// How the metal of a bore's layers is thinned by what they are laid on.
struct Dilution {
    Sourced<double> share; ///< D, of the job or the usual one of the process
    std::optional<SourcedRange<double>> range;
    Sourced<double> limit;              ///< of base metal left in a layer that counts as the filler's own
    int needed = 0;                     ///< layers until then
    std::vector<double> base_left = {}; ///< in each layer of the bore
    int finish_layer = 0;               ///< that the finished surface lies in; 0: in none
};

/// Nothing when the table says nothing of the process and the job does not either.
std::optional<Dilution> dilution(const Procedure& procedure, const Filler& filler, const Processes& processes,
                                 const std::vector<Layer>& layers, Length finish_radius);

} // namespace ringfill
