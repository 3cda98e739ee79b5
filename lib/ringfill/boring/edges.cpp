#include <ringfill/boring/edges.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {

int edges_for(Time cutting, Time life) {
    const double count = std::ceil((cutting / life).value() - 1e-9);
    return static_cast<int>(std::clamp<double>(count, 0, most_edges + 1));
}

Edges edges(Time rough_time, Time finish_time, Time life) {
    return {edges_for(rough_time, life), std::max(1, edges_for(finish_time, life)), rough_time, finish_time,
            life};
}

} // namespace ringfill
