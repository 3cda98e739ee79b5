#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/weld/bore_weld.hpp>
#include <ringfill/weld/ferrite.hpp>

namespace ringfill {

/// How filler and base metal of one bore go together.
struct BoreMetals {
    std::optional<Suit> suit;        ///< the rule on filler and base metal; nothing: no table has one
    std::vector<std::string> buffer; ///< fillers of the buffer that it asks for, family/name
    std::optional<SourcedRange<double>> efficiency_range; ///< usual of the filler or its process
    std::optional<Dilution> dilution;
    std::optional<LayerMetals> layer_metals; ///< of austenitic stainless layers
    /// Why nothing is said of the ferrite of stainless layers, the end of a sentence; empty: there is nothing
    /// to say.
    std::string no_ferrite;
};

BoreMetals bore_metals(const GivenBore& given, const BoreWeld& weld, const Shop& shop);

} // namespace ringfill
