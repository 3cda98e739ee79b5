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
inline constexpr std::string_view pass_names[] = {"groove", "layer", "face"};

/// One groove, layer or face as it is welded; each figure is for one bore.
struct PassRow {
    PassKind kind = PassKind::layer;
    std::size_t number = 0; ///< of its kind, from 1
    Speed travel;
    Turning first_torch;
    Turning last_torch;
    Length path;
    Mass laid;
    Time arc;
    int layers = 1;
    std::optional<int> rings = {};    ///< a layer; nothing of a groove, which is filled
    std::optional<Length> pitch = {}; ///< likewise
    std::optional<Length> from = {};  ///< diameter before it; of a face of its first ring
    std::optional<Length> to = {};

    std::string_view name() const { return pass_names[static_cast<std::size_t>(kind)]; }
};

/// What is welded of a bore in the sequence of the work: grooves, bore, faces.
std::vector<PassRow> pass_rows(const BorePlan& bore);

/// What to set and lay, bore by bore in the sequence of the work: grooves, layers, faces, with the torch
/// speed of each. Each figure is for one bore. Under 80 columns, in the plan's units.
std::string passes_text(const Plan& plan, const Style& style);

} // namespace ringfill
