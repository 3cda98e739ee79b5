#include <ringfill/caution/hot_work.hpp>

namespace ringfill {

Caution hot_work() {
    return {"the job",
            "before",
            "yes",
            "This is hot work. Preheat and interpass temperatures here are reminders from published methods "
            "made for plate: the approved welding procedure, local codes and licensed practice rule over "
            "everything here.",
            "there is an arc and a flame",
            "practice"};
}

} // namespace ringfill
