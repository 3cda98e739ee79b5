#pragma once

#include <fmt/format.h>

#include <ringfill/material/shop.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// The usual fields of a procedure; a test adds to them or writes its own.
inline const std::string usual =
    R"("filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M21", "travel": "350 mm/min")";

/// A bore of 90 mm, 100 mm long, worn to 93.4 mm and 0.4 mm to one side.
inline std::string bore_text(const std::string& name, const std::string& more = "") {
    return fmt::format(
        R"({{ "name": "{}", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
        "boss_diameter": "180 mm", "worn": {{ "diameter": "93.4 mm", "offset": "0.4 mm" }}{} }})",
        name, more);
}

/// A job of one procedure named main and the bores given.
inline std::string job_text(const std::string& procedure, const std::string& bores,
                            const std::string& more = "") {
    return fmt::format(R"({{ "format": "ringfill-job/1", "title": "Swing-arm pivots", "units": "mm",
        "procedures": {{ "main": {{ {} }} }}, "bores": [ {} ]{} }})",
                       procedure, bores, more);
}

inline Job job_with(const std::string& procedure) {
    return job_from(job_text(procedure, bore_text("arm root")));
}

/// The faults that settings() finds in a procedure; empty when it stands.
inline std::vector<Fault> procedure_faults(const std::string& procedure, const Shop& in = shop()) {
    const Job job = job_with(procedure);
    std::vector<Fault> faults;
    const auto found = settings(job.procedures.front(), in, faults);
    CHECK(found.has_value() == faults.empty());
    return faults;
}

/// The same line by line.
inline std::vector<std::string> faults_of(const std::string& procedure, const Shop& in = shop()) {
    std::vector<std::string> lines;
    for (const Fault& fault : procedure_faults(procedure, in))
        lines.push_back(to_string(fault));
    return lines;
}

/// The shop with one filler of it changed.
template <class Change>
Shop shop_with_filler(const std::string& family, const std::string& name, Change change) {
    const Registry::Families known = shop().registry.families();
    std::vector<Family> families(known.begin(), known.end());
    bool found = false;
    for (Family& one : families)
        for (Filler& filler : one.fillers)
            if (one.name == family && filler.name == name) {
                change(filler);
                found = true;
            }
    REQUIRE(found);
    Shop changed = shop();
    changed.registry = Registry(std::move(families));
    return changed;
}

using Lines = std::vector<std::string>;

} // namespace ringfill::testing
