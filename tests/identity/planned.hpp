#pragma once

#include <cmath>

#include <ringfill/document/value.hpp>

#include "identity/random_job.hpp"
#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// The plan of a sketch. A sketch that is refused fails the test: random jobs can be planned.
inline Plan planned(const Sketch& sketch, UnitSystem units = UnitSystem::metric) {
    return plan(job_from(text_of(sketch, units)), shop());
}

/// Equal to a share of the larger one, or to 1e-12 of whatever unit: differences that should be 0 are
/// rounding.
inline bool close(double a, double b, double share) {
    return std::fabs(a - b) <= std::max(share * std::max(std::fabs(a), std::fabs(b)), 1e-12);
}

/// A number of a document with its path.
struct Figure {
    std::string path;
    double value = 0;
};

/// Every number below a value, in order.
inline void add_figures(std::vector<Figure>& figures, const Value& value, const std::string& path) {
    if (const double* number = value.number())
        figures.push_back({path, *number});
    if (const Value::List* list = value.list())
        for (std::size_t i = 0; i < list->size(); ++i)
            add_figures(figures, (*list)[i], path + '[' + std::to_string(i) + ']');
    if (const Value::Object* object = value.object())
        for (const Member& member : *object)
            add_figures(figures, member.value, path + '.' + member.name);
}

inline std::vector<Figure> figures_of(const Value& value, const std::string& path = "") {
    std::vector<Figure> figures;
    add_figures(figures, value, path);
    return figures;
}

} // namespace ringfill::testing
