#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

enum class PassKind { groove, layer, face };
std::string_view name_of(PassKind kind);

/// One groove, layer or face as it is welded; each figure is for one bore.
struct PassRow {
    PassKind kind = PassKind::layer;
    std::size_t number = 0;     ///< of its kind, from 1
    std::optional<Length> from; ///< diameter before it; of a face of its first ring
    std::optional<Length> to;
    int layers = 1;
    std::optional<int> rings; ///< a layer; nothing of a groove, which is filled
    std::optional<Length> pitch;
    Speed travel;
    Turning first_torch;
    Turning last_torch;
    Length path;
    Mass laid;
    Time arc;
};

/// What is welded of a bore in the sequence of the work: grooves, bore, faces.
std::vector<PassRow> pass_rows(const BorePlan& bore);

/// Procedure, filler, and what stays the same through all layers of a bore.
std::string settings_sentence(const BorePlan& bore, UnitSystem units);

/// How filler and base metal of a bore go together, in paragraphs: whether the one suits the other and why,
/// how much is deposited, dilution by layer, ferrite of stainless layers.
std::string metals_text(const BorePlan& bore);

/// What to set and lay, bore by bore in the sequence of the work: grooves, layers, faces, with the torch
/// speed of each. Each figure is for one bore. Under 80 columns, in the plan's units.
std::string passes_text(const Plan& plan, const Style& style);

} // namespace ringfill
