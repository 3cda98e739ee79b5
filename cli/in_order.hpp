#pragma once

#include <functional>
#include <optional>
#include <string>

#include <ringfill/document/lines.hpp>

#include "exit_code.hpp"

namespace ringfill::cli {

/// What one line of many is answered with.
struct LineAnswer {
    std::string text;          ///< with its line break
    ExitCode status = planned; ///< what it would be alone
    std::string why;           ///< the first fault as a sentence; empty: none
};

/// Where lines come from, what answers one, and where answers go; `put` tells whether more are wanted.
struct LineWork {
    std::function<std::optional<Line>()> next;
    std::function<LineAnswer(Line)> answer;
    std::function<bool(LineAnswer)> put;
};

/// Answers line after line, several at once, and puts the answers in the order of the lines. `next` and `put`
/// are each called by one thread at a time, `answer` by all of them. No more lines are in flight than a few
/// for each worker. Ends when there is no next line or no more is wanted, once the lines in flight are put;
/// then throws again what one of the three threw first.
void answer_in_order(const LineWork& work, unsigned workers);

} // namespace ringfill::cli
