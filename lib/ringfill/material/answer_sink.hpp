#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include <ringfill/material/abi.h>
#include <ringfill/material/answer.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A rule of the interface that a plugin broke. Thrown between checking and the sink that keeps it; never
/// into a plugin.
struct Breach {
    std::string what; ///< as the rest of the sentence "NAME ..."
    std::string remedy;
};

/// What each flag of a method says of it.
inline constexpr std::pair<std::uint32_t, bool AnsweredMethod::*> method_flags[] = {
    {RF_OUT_OF_COMPOSITION, &AnsweredMethod::out_of_composition},
    {RF_OUT_OF_THICKNESS, &AnsweredMethod::out_of_thickness},
    {RF_AT_EDGE, &AnsweredMethod::at_edge},
    {RF_NONE_NEEDED, &AnsweredMethod::none_needed},
    {RF_NO_FIGURE, &AnsweredMethod::no_figure},
    {RF_SECOND_OPINION, &AnsweredMethod::second_opinion},
    {RF_NOT_USABLE, &AnsweredMethod::not_usable}};

/// A copy of a text that a plugin gives; `what` names it in the breach. Throws Breach when it is null
/// with a size, too long, not UTF-8 or not clean.
std::string checked_text(const rf_text& text, std::string_view what);

/// The same; an empty text is a breach too.
std::string checked_name(const rf_text& text, std::string_view what);

/// The key of a source that the bibliography has. `whose`: what it is the source of.
std::string checked_source(const rf_text& key, std::string_view whose, const Bibliography& sources);

/// A copy of a value, by its name from the list in abi.h. Throws Breach.
AnsweredFigure checked_value(const rf_figure* figure, const Bibliography& sources);

/// A copy of a method. Throws Breach.
AnsweredMethod checked_method(const rf_figure* figure, const Bibliography& sources);

/// A copy of an advice. Throws Breach.
Advice checked_advice(const rf_text& kind, const rf_text& text, const rf_text& source,
                      const Bibliography& sources);

/// Takes what a plugin says during one call: checks it, copies it, and keeps the first breach.
class AnswerSink {
  public:
    explicit AnswerSink(const Bibliography& sources) : sources_(sources) {}
    AnswerSink(const AnswerSink&) = delete;
    AnswerSink& operator=(const AnswerSink&) = delete;

    /// What the plugin is given. It points here, so this object must outlive the call.
    rf_sink interface() noexcept;

    /// The answer, after a call that ended in a status. Throws std::bad_alloc when there was no room to keep
    /// what was said.
    struct Outcome {
        FamilyAnswer answer;
        std::optional<Breach> breach;
        std::optional<std::string> refusal; ///< why the plugin cannot answer
    };
    Outcome outcome(rf_status status, const std::string& topic);

    /// The first breach so far.
    const std::optional<Breach>& breach() const { return breach_; }

  private:
    void take_value(const rf_figure* figure);
    void take_method(const rf_figure* figure);
    void take_advice(const rf_text& kind, const rf_text& text, const rf_text& source);
    void take_fault(const rf_text& where, const rf_text& what);

    /// Runs one of the above; nothing is thrown into the plugin.
    template <class Take>
    static void safely(void* context, const Take& take) noexcept;

    const Bibliography& sources_;
    FamilyAnswer answer_;
    std::optional<Breach> breach_;
    std::optional<std::string> fault_;
    bool out_of_memory_ = false;
};

} // namespace ringfill
