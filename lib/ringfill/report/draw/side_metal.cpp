#include <ringfill/report/draw/side_metal.hpp>

#include <algorithm>

#include <ringfill/report/draw/hatch.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr Hatching pad_hatching{0.9, 20};
constexpr Pen no_pen{0, {}};

/// The edge of the boss at one face, from the bore outwards, set back where the face is worn.
/// @param inwards 1 at the near face, −1 at the far one.
std::vector<PaperPoint> face_edge(const SideFrame& frame, const RingSection& section, double face,
                                  double inwards, const std::optional<PadShape>& pad) {
    const double wall = wall_at(section, face);
    const double outside = section.outside();
    std::vector<PaperPoint> edge;
    if (!pad)
        return {frame.at(face, wall), frame.at(face, outside)};
    const double inner = std::clamp(pad->inner, wall, outside);
    const double outer = std::clamp(pad->outer, wall, outside);
    const double worn = face + inwards * pad->worn;
    if (inner > wall)
        edge = {frame.at(face, wall), frame.at(face, inner)};
    edge.push_back(frame.at(worn, inner));
    edge.push_back(frame.at(worn, outer));
    if (outer < outside) {
        edge.push_back(frame.at(face, outer));
        edge.push_back(frame.at(face, outside));
    }
    return edge;
}

void draw_boss(Svg& svg, const SideFrame& frame, const RingSection& section, const WornBore& bore,
               const BorePlan& plan) {
    const double length = mm(bore.length);
    const auto near = face_edge(frame, section, 0, 1, pad_shape(bore, plan, 0));
    const auto far = face_edge(frame, section, length, -1, pad_shape(bore, plan, 1));
    auto shape = near;
    shape.insert(shape.end(), far.rbegin(), far.rend());
    const auto wall = wall_line(frame, section, length, 0);
    shape.insert(shape.end(), wall.begin(), wall.end());
    svg.path(hatch({shape}, boss_hatching), hatch_pen);
    svg.path(open_path(near), outline_pen);
    svg.path(open_path(far), outline_pen);
    svg.line(near.back(), far.back(), section.boss ? outline_pen : removed_pen);
}

std::vector<PaperPoint> block(const SideFrame& frame, double from, double to, double inner, double outer) {
    return {frame.at(from, inner), frame.at(from, outer), frame.at(to, outer), frame.at(to, inner)};
}

/// A hole turned into the section; one whose other end is blind or not known goes half as far, open.
void draw_hole(Svg& svg, const SideFrame& frame, const RingSection& section, const Hole& hole) {
    const bool through = hole.other_end && *hole.other_end != "blind";
    const double depth = mm(hole.depth);
    const double half = mm(hole.diameter) / 2;
    const double wall = wall_at(section, depth);
    const double to = through ? section.outside() : (wall + section.outside()) / 2;
    svg.cover(block(frame, depth - half, depth + half, wall, to), no_pen);
    for (const double side : {depth - half, depth + half})
        svg.line(frame.at(side, wall), frame.at(side, to), hole_pen(through, 2 * half * frame.scale));
    svg.line(frame.at(depth, wall), frame.at(depth, section.outside()), chain_pen);
}

void draw_grooves(Svg& svg, const SideFrame& frame, const RingSection& section, const WornBore& bore,
                  const BorePlan& plan, bool before_welding) {
    for (std::size_t i = 0; i < bore.grooves.size(); ++i) {
        const double half = mm(bore.grooves[i].width) / 2;
        const double floor = mm(bore.grooves[i].diameter) / 2;
        const double depth = groove_depth(bore, i);
        if (before_welding && plan.grooves[i].volume > Volume()) {
            const auto filled = block(frame, depth - half, depth + half, wall_at(section, depth), floor);
            svg.cover(filled, outline_pen);
            svg.path(hatch({filled}, weld_hatching), hatch_pen);
        }
        if (!before_welding && floor > section.finish)
            svg.path(open_path(block(frame, depth - half, depth + half, section.finish, floor)), finish_pen);
    }
}

void draw_pad(Svg& svg, const SideFrame& frame, const RingSection& section, double face, double inwards,
              const PadShape& pad) {
    const auto shape = block(frame, face - inwards * pad.over, face + inwards * pad.worn,
                             pad.inner - pad.overhang, pad.outer + pad.overhang);
    svg.path(hatch({block(frame, face - inwards * pad.over, face + inwards * pad.worn,
                          std::clamp(pad.inner - pad.overhang, section.skim, pad.outer + pad.overhang),
                          pad.outer + pad.overhang)},
                   pad_hatching),
             hatch_pen);
    svg.path(closed_path(shape), outline_pen);
    svg.line(frame.at(face, pad.inner), frame.at(face, pad.outer), finish_pen);
}

} // namespace

std::optional<PadShape> pad_shape(const WornBore& bore, const BorePlan& plan, std::size_t face) {
    if (face >= bore.faces.size() || face > 1)
        return std::nullopt;
    const Face& worn = bore.faces[face];
    const FacePad& pad = plan.faces[face];
    const double thickness = mm(static_cast<double>(pad.layers) * pad.bead.layer_height());
    // A face worn deeper than the bore is long is a slip in the job; the drawing stays within the bore.
    return PadShape{std::min(mm(worn.build), mm(bore.length) / 2), thickness - mm(worn.build),
                    mm(worn.inner) / 2, mm(worn.outer) / 2, mm(bore.overhang)};
}

double groove_depth(const WornBore& bore, std::size_t groove) {
    return mm(bore.length) * static_cast<double>(groove + 1) / static_cast<double>(bore.grooves.size() + 1);
}

void draw_metal(Svg& svg, const SideFrame& frame, const RingSection& section, const WornBore& bore,
                const BorePlan& plan) {
    const RingRow row = ring_row(bore, plan);
    const double length = mm(bore.length);
    draw_boss(svg, frame, section, bore, plan);
    for (const Hole& hole : bore.holes)
        draw_hole(svg, frame, section, hole);
    draw_grooves(svg, frame, section, bore, plan, true);
    draw_weld(svg, frame, section, row, row.end(), length);
    if (const auto pad = pad_shape(bore, plan, 0))
        draw_pad(svg, frame, section, 0, 1, *pad);
    if (const auto pad = pad_shape(bore, plan, 1))
        draw_pad(svg, frame, section, length, -1, *pad);
    draw_grooves(svg, frame, section, bore, plan, false);
}

} // namespace ringfill
