#include <ringfill/caution/hot_work.hpp>

namespace ringfill {

Caution hot_work() {
    return {"the job",
            "before",
            "yes",
            "This is hot work. Take preheat and interpass temperature from the approved welding procedure "
            "before the "
            "first arc; local codes, that procedure and licensed practice rule over everything here.",
            "this plan has no preheat in it",
            "practice"};
}

} // namespace ringfill
