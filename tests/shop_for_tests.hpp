#pragma once

#include <string>

#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill::testing {

/// The shop with the product's own tables and plugins, read once.
inline const Shop& shop() {
    static const Shop ready = read_shop(Shelf{{RINGFILL_TABLES}}, {RINGFILL_PLUGIN_FOLDER});
    return ready;
}

/// A job from its text.
inline Job job_from(const std::string& text) {
    return read_job(parse("job.json", text, Origin::job));
}

} // namespace ringfill::testing
