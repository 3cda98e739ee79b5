#include <ringfill/report/draw/side_notes.hpp>

#include <fmt/format.h>

#include <ringfill/report/draw/ring_section.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::string hole_note(const Hole& hole, std::size_t number, UnitSystem units) {
    return fmt::format("Hole H{}: {}, {} from the near face, at {}, {}.", number,
                       diameter_text(mm(hole.diameter) / 2, units), length_text(hole.depth, units),
                       clock_text(hole.clock),
                       !hole.other_end              ? "other end not given"
                       : *hole.other_end == "open"  ? "open"
                       : *hole.other_end == "blind" ? "blind"
                                                    : "with a fitting");
}

std::string groove_note(const WornBore& bore, const BorePlan& plan, std::size_t i, UnitSystem units) {
    const Groove& groove = bore.grooves[i];
    std::string text =
        fmt::format("Groove {}: {}, {} wide, ", i + 1, diameter_text(mm(groove.diameter) / 2, units),
                    length_text(groove.width, units));
    text += plan.grooves[i].volume > Volume() ? "filled first" : "gone with the skim, nothing to fill";
    text += groove.diameter > bore.finish_diameter ? ", cut again after boring" : "";
    return text + ". The job does not say where along the bore.";
}

std::string face_note(const WornBore& bore, std::size_t i, UnitSystem units) {
    const Face& face = bore.faces[i];
    return fmt::format("Face {}: built up by {} and {} of stock, {} to {}. {}", i + 1,
                       length_text(face.build, units), length_text(bore.stock, units),
                       diameter_text(mm(face.inner) / 2, units), diameter_text(mm(face.outer) / 2, units),
                       i > 1 ? "Not drawn."
                             : fmt::format("The job does not say which face; drawn at the {} one.",
                                           i == 0 ? "near" : "far"));
}

} // namespace

std::vector<std::string> side_notes(const WornBore& bore, const BorePlan& plan, UnitSystem units) {
    constexpr std::size_t most_holes = 6;
    std::vector<std::string> notes;
    const std::size_t told = bore.holes.size() <= most_holes ? bore.holes.size() : most_holes - 1;
    for (std::size_t i = 0; i < told; ++i)
        notes.push_back(hole_note(bore.holes[i], i + 1, units));
    if (told < bore.holes.size())
        notes.push_back(
            fmt::format("{} more holes are drawn; the job lists them.", bore.holes.size() - told));
    if (!bore.holes.empty())
        notes.emplace_back("Holes are turned into the section.");
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        notes.push_back(groove_note(bore, plan, i, units));
    for (std::size_t i = 0; i < bore.faces.size(); ++i)
        notes.push_back(face_note(bore, i, units));
    for (const Length& plate : bore.attached)
        notes.push_back(
            fmt::format("A plate of {} stands on the boss, not drawn.", length_text(plate, units)));
    if (!plan.build.skimmed)
        notes.emplace_back(
            "Layers are counted from the mean radius of the worn surface: over the deepest wear "
            "the first is drawn thicker than it is laid.");
    if (!bore.boss_diameter)
        notes.emplace_back("The boss is not given; its outline is broken.");
    return notes;
}

} // namespace ringfill
