#pragma once

#include <exception>
#include <stdexcept>
#include <string>
#include <utility>

#include <support/sink.hpp>

namespace ringfill::family {

/// Why a question cannot be answered, and the name of the value at fault, or nothing. A rule may throw it.
class Refusal : public std::runtime_error {
  public:
    Refusal(std::string where, const std::string& what)
        : std::runtime_error(what), where_(std::move(where)) {}
    const std::string& where() const noexcept { return where_; }

  private:
    std::string where_;
};

/// Runs a rule so that nothing is thrown into the program: what it throws becomes a fault and RF_REFUSED.
/// The rule is called with a Sink and the rf_question and returns an rf_status.
template <class Rule>
rf_status guarded(const rf_sink* sink, const rf_question* question, const Rule& rule) noexcept {
    const Sink to(*sink);
    try {
        return rule(to, *question);
    } catch (const Refusal& refusal) {
        to.fault(refusal.where(), refusal.what());
    } catch (const std::exception& error) {
        to.fault({}, error.what());
    } catch (...) {
        to.fault({}, "the rule failed for an unknown reason");
    }
    return RF_REFUSED;
}

} // namespace ringfill::family
