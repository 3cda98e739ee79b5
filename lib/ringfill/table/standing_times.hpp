#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// How long a step takes that is neither welded, heated nor cut.
struct StepTime {
    std::string name;   ///< "align", "clean a layer"
    Sourced<Time> time; ///< of changing, chipping and cleaning in a minute of arc
    std::optional<SourcedRange<Time>> range;
};

/// The steps that a day is made of; a table holds them all.
inline constexpr std::string_view standing_steps[] = {"arrive",
                                                      "align",
                                                      "survey",
                                                      "plug a hole",
                                                      "crack check",
                                                      "mount torch",
                                                      "clean a layer",
                                                      "step a ring",
                                                      "peen a stitch",
                                                      "change and chip electrodes",
                                                      "chip flux-cored wire",
                                                      "clean solid wire",
                                                      "clean rods",
                                                      "rig burner",
                                                      "mount tool",
                                                      "measure size",
                                                      "strip",
                                                      "leave",
                                                      "crack test",
                                                      "heat treatment"};

/// Reads standing_times.json, file after file; a later file corrects step by step. Throws Faulty
/// (Origin::table), also for a step that no day has, a time outside its range, and a step that is in no file.
std::vector<StepTime> read_standing_times(const std::vector<Document>& files, const Bibliography& sources);

/// The time of a step of standing_steps.
const StepTime& step_time(const std::vector<StepTime>& times, std::string_view step);

} // namespace ringfill
