#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>
#include <ringfill/report/text/sentence.hpp>

namespace ringfill {

/// How a figure on a page follows from the one of the result, beside the unit and the rounding to its digits.
enum class Shown {
    plainly,
    twice, ///< a radius as its diameter
    up,    ///< rounded up: a least temperature in steps of 5 °C or 10 °F, a lower limit of size in its last
           ///< digit
    down,  ///< rounded down likewise
    clock, ///< seconds from the start of the day as day and time of the clock
    count, ///< how many a list holds
};

/// A figure of the plan as people read it, with its way in the result (`bores[0].build.skim_diameter_mm`), so
/// that page and result can be held against each other.
Markup figure(const std::string& path, const std::string& shown, Shown how = Shown::plainly);

/// A figure as the job gives it, with its way in the job file.
Markup given(const std::string& path, const std::string& shown);

/// A text of the result, word for word.
Markup as_told(const std::string& path, const std::string& text);

/// What is melted for one bore: wire by its mass, electrodes and rods by their number.
/// @param path the way of the bore's block "metal" in the result.
Markup filler_figure(const std::string& path, const BorePlan& bore, UnitSystem units);

/// Sentences as paragraphs, advice as a list. @param bore the way of their bore in the result; may be empty.
Markup paragraphs(const Sentences& sentences, const std::string& bore);

} // namespace ringfill
