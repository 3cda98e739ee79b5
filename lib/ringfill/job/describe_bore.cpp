
#include <fmt/format.h>

#include <ringfill/job/description.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

constexpr std::string_view axes[] = {"horizontal", "vertical"};
constexpr std::string_view no_skim[] = {"none"};
constexpr std::string_view other_ends[] = {"open", "fitting", "blind"};

constexpr Field attached_fields[] = {
    must<&Plate::thickness>("thickness", plate, R"("25 mm")", "thickness of the plate"),
    field<&Plate::depth>("depth", distance, R"("50 mm")",
                         "depth of its middle from the near face; half the length when left out"),
    // m; a plate that ends sooner is no plate
    field<&Plate::reach>(
        "reach", Span{0.03, absurd_length}, R"("600 mm")",
        "how far it reaches past the boss; 600 mm for 30 mm, with the root of the thickness, "
        "when left out: more moves no figure"),
    field<&Plate::wrapped>("wrapped", "false", "the blanket lies on the plate too"),
};
constexpr Field face_fields[] = {
    must<&Face::inner>("inner", size, R"("90 mm")", "inner diameter of the pad"),
    must<&Face::outer>("outer", size, R"("150 mm")", "outer diameter of the pad"),
    must<&Face::build>("build", size, R"("2 mm")", "how far the finished face stands over the worn one"),
};

constexpr Field groove_fields[] = {
    must<&Groove::diameter>("diameter", size, R"("96 mm")", "diameter of the groove's floor"),
    must<&Groove::width>("width", size, R"("4 mm")", "width along the bore"),
};

constexpr Field hole_fields[] = {
    must<&Hole::diameter>("diameter", size, R"("10 mm")", "diameter of the hole"),
    must<&Hole::depth>("depth", distance, R"("50 mm")", "depth of its centre from the near face"),
    must<&Hole::clock>("clock", turn, R"("90 deg")", "its clock position, from 12 o'clock"),
    field<&Hole::other_end>("other_end", other_ends, R"("open")", "what is at its other end"),
};

void check_face(Face& face, const Entry& entry) {
    if (entry.is_read("inner") && entry.is_read("outer") && face.inner >= face.outer)
        entry.refuse("outer", "is not larger than the inner diameter", "swap the two or measure again");
}

void check_what_lies_along(const WornBore& bore, const Entry& entry) {
    const auto grooves = entry.objects_again("grooves");
    for (std::size_t i = 0; i < bore.grooves.size(); ++i)
        if (bore.grooves[i].width > bore.length)
            grooves[i].refuse("width", "is wider than the bore is long", "measure it along the bore");
    const auto plates = entry.objects_again("attached");
    for (std::size_t i = 0; i < bore.attached.size(); ++i)
        if (bore.attached[i].depth && *bore.attached[i].depth > bore.length)
            plates[i].refuse("depth", "lies outside the bore", "measure the depth from the near face");
    const auto holes = entry.objects_again("holes");
    for (std::size_t i = 0; i < bore.holes.size(); ++i) {
        if (bore.holes[i].depth > bore.length)
            holes[i].refuse("depth", "lies outside the bore", "measure the depth from the near face");
        if (bore.holes[i].diameter > bore.length)
            holes[i].refuse("diameter", "is wider than the bore is long", "measure the hole again");
    }
}

/// Inch sizes and fractions may differ from a limit in their last digit [m].
const Length rounding = in_si<Length>(1e-9);

/// The finish diameter lies between the smallest and the largest size.
void check_size_limits(const WornBore& bore, const Entry& entry) {
    if (entry.has("size_limits") && entry.has("size_class"))
        entry.refuse("size_limits", "stands beside size_class", "give the limits in one of the two ways");
    if (!entry.is_read("size_limits"))
        return;
    const auto& [smallest, largest] = *bore.size_limits;
    if (smallest > largest)
        entry.refuse("size_limits", "has its smaller size last", "swap the two");
    else if (entry.is_read("finish_diameter") &&
             (bore.finish_diameter < smallest - rounding || bore.finish_diameter > largest + rounding))
        entry.refuse("size_limits", "does not hold the finish diameter",
                     "write the smallest and the largest size around finish_diameter");
}

void check_bore(WornBore& bore, const Entry& entry) {
    if (bore.base == "unknown" && entry.reading().by_hand)
        entry.refuse("base", "names no family", R"(name it "steel/unknown" until a magnet says otherwise)");
    if (bore.base == "unknown")
        bore.base = "steel/unknown"; // until a magnet says otherwise
    check_shares(bore.composition, entry, "composition");
    check_size_limits(bore, entry);
    if (entry.is_read("length"))
        check_what_lies_along(bore, entry);
    if (!entry.is_read("finish_diameter"))
        return;
    if (bore.boss_diameter && *bore.boss_diameter <= bore.finish_diameter)
        entry.refuse("boss_diameter", "is not larger than the finish diameter",
                     "measure the outside diameter of the boss");
    if (entry.is_read("stock") && bore.stock >= bore.finish_diameter / 2.0)
        entry.refuse("stock", "leaves no bore to weld to",
                     "write the stock per side, less than the finish radius");
}

constexpr Field bore_fields[] = {
    must<&WornBore::name>("name", name, R"("arm root")", "what the bore is called on site; no two alike"),
    field<&WornBore::count>("count", count, "1", "how many bores alike; 1 when left out"),
    field<&WornBore::line>("line", name, R"("root")",
                           "bores with the same line are bored in one set-up of the bar"),
    by_practice<&WornBore::axis>("axis", axes, R"("horizontal")",
                                 "how the bore lies; with a horizontal axis every turn passes overhead"),
    must<&WornBore::base>("base", name, R"("steel/C45")",
                          "the metal of the boss, family/grade; \"unknown\" when nobody can name it"),
    field<&WornBore::composition>(
        "composition", Span{0, 100}, R"({ "C": 0.46, "Mn": 0.68 })",
        "percent by mass from the mill certificate; each element takes the place of the table's"),
    field<&WornBore::carbon_equivalent_pct>("carbon_equivalent", Span{0.1, 2}, "0.43",
                                            "CEV (CE of the IIW) as the certificate prints it, percent"),
    field<&WornBore::bought_after>("bought_after", Span{1900, 2100}, "2004",
                                   "the metal was bought in that year or later"),
    field<&WornBore::product_thickness>(
        "product_thickness", size, R"("60 mm")",
        "thickness of the plate, bar or forging that the part was cut from; the largest of wall, length and "
        "half the boss when left out"),
    // kg
    field<&WornBore::part_mass>("part_mass", Span{1e-3, 1e6}, R"("800 kg")",
                                "mass of the whole casting, which is heated with the boss"),
    field<&WornBore::magnetic>(
        "magnetic", "true",
        "whether a magnet holds on the boss; try it before any heat when the metal is unknown"),
    must<&WornBore::finish_diameter>("finish_diameter", size, R"("90 mm")",
                                     "the diameter the bore will be finished to"),
    field<&WornBore::size_class>("size_class", name, R"("H9")", "the ISO 286 tolerance of the finished bore"),
    field<&WornBore::size_limits>(
        "size_limits", size, R"(["90.000 mm", "90.087 mm"])",
        "instead of size_class: smallest and largest diameter of the finished bore"),
    must<&WornBore::length>("length", size, R"("100 mm")", "finished length between the faces"),
    shown<&WornBore::boss_diameter>(
        "boss_diameter", size, R"("180 mm")",
        "outside diameter of the boss; without it no wall, no boss mass and no heat balance"),
    field<&WornBore::attached>("attached", list_of(attached_record, 1, 100), R"([{ "thickness": "25 mm" }])",
                               "plates on the boss that carry heat off"),
    // W/K
    field<&WornBore::carry_off>("carry_off", Span{0, 1e5}, R"("2 W/K")",
                                "heat carried off into the machine, if known; overrules the plates"),
    field<&WornBore::heat_wall>("heat_wall", plate, R"("43 mm")",
                                "the thickness that governs preheat, if not the wall after the skim"),
    must<&read_worn>("worn", worn_record, R"({ "diameter": "93.4 mm", "offset": "0.4 mm" })",
                     "the worn surface, as measured")
        .given_by<give_worn>(),
    by_practice<&WornBore::skim>("skim", distance, R"("0.5 mm")",
                                 "clean-up cut before welding, per side, past the deepest wear; \"none\" "
                                 "welds on the surface as it is")
        .or_words(no_skim),
    by_practice<&WornBore::stock>("stock", distance, R"("2 mm")",
                                  "weld metal left for the boring bar, per side"),
    by_practice<&WornBore::overhang>("overhang", distance, R"("3 mm")",
                                     "how far the weld runs past each face"),
    field<&WornBore::procedure>("procedure", name, R"("main")",
                                "which of the procedures; may be left out when there is only one"),
    field<&WornBore::faces>("faces", list_of(face_record, 1, 20),
                            R"([{ "inner": "90 mm", "outer": "150 mm", "build": "2 mm" }])",
                            "worn boss faces to build up"),
    field<&WornBore::grooves>("grooves", list_of(groove_record, 1, 100),
                              R"([{ "diameter": "96 mm", "width": "4 mm" }])",
                              "ring grooves, filled before the bore is welded"),
    field<&WornBore::holes>(
        "holes", list_of(hole_record, 1, 100),
        R"([{ "diameter": "10 mm", "depth": "50 mm", "clock": "90 deg", "other_end": "open" }])",
        "holes into the bore, plugged before welding"),
};

} // namespace

const Record attached_record = record_of<Plate>("an attached plate", "a plate on the boss", attached_fields);
const Record face_record = record_of<Face, check_face>("a face", "a worn boss face", face_fields);
const Record groove_record = record_of<Groove>("a groove", "a ring groove", groove_fields);
const Record hole_record = record_of<Hole>("a hole", "a hole into the bore", hole_fields);
const Record bore_record =
    record_of<WornBore, check_bore>("a bore", "one bore, or several alike", bore_fields);

} // namespace ringfill
