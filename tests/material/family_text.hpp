#pragma once

#include <sstream>
#include <string>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/material/family.hpp>

#include "document/refused.hpp"

namespace ringfill::testing {

inline const Bibliography known_sources = {{"practice", {"common practice", "-", "-", "practice", "memory"}}};

/// The text of a family's table: further members after its signature.
inline std::string family_text(const std::string& members, const std::string& family = "alloy") {
    return fmt::format(R"({{"format": "ringfill-family/1", "family": "{}", "description": "d", {}}})", family,
                       members);
}

/// A base metal's members.
inline const std::string base =
    R"("standard": "s", "structure": "ferritic", "density_kg_m3": [7850, "practice"])";

/// A solid wire's members, its diameters left open.
inline const std::string solid =
    R"("standard": "s", "form": "solid", "wire_density_kg_m3": [7850, "practice"],
"deposit_density_kg_m3": [7800, "practice"], "efficiency": [0.9, "practice"], "bead_ratio": [3, "practice"],
"stick_out_mm": [12, "practice"], "gases": ["M21"])";

/// A cored wire's members, its diameters left open.
inline const std::string cored =
    R"("standard": "s", "form": "cored", "deposit_density_kg_m3": [7800, "practice"],
"efficiency": [0.9, "practice"], "bead_ratio": [3, "practice"], "stick_out_mm": [12, "practice"], "gases": [])";

/// A family with one filler F.
inline std::string filler_text(const std::string& members, const std::string& diameters) {
    return family_text(
        fmt::format("\"fillers\": {{\"F\": {{{},\n\"diameters_mm\": {{{}}}}}}}", members, diameters));
}

inline Family family_of(const std::string& text) {
    return read_family("alloy", {parse("alloy.json", text, Origin::table)}, known_sources);
}

/// What a family is refused with, a line a fault, without the excerpts; "accepted" when it loads.
inline std::string refused(const std::string& text) {
    std::istringstream whole(refusal(Origin::table, [&] { family_of(text); }));
    std::string lines;
    for (std::string line; std::getline(whole, line);)
        if (!line.starts_with("    "))
            lines += line + '\n';
    return lines;
}

} // namespace ringfill::testing
