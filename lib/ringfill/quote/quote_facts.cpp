#include <ringfill/quote/quote_facts.hpp>

namespace ringfill {

std::string phase_field(Phase phase) {
    switch (phase) {
    case Phase::set_up:
        return "set_up";
    case Phase::heating:
        return "heating";
    case Phase::welding:
        return "welding";
    case Phase::waiting:
        return "waiting";
    case Phase::boring:
        return "boring";
    case Phase::clean_up:
        break;
    }
    return "clean_up";
}

std::string phase_in_words(Phase phase) {
    switch (phase) {
    case Phase::set_up:
        return "set-up and checks";
    case Phase::heating:
        return "preheat, reheats, hold";
    case Phase::welding:
        return "welding";
    case Phase::waiting:
        return "waiting by day";
    case Phase::boring:
        return "boring and measuring";
    case Phase::clean_up:
        break;
    }
    return "packing and handing over";
}

} // namespace ringfill
