#include <ringfill/job/read_bore.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/job/read_worn.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

/// The skim; nothing for "none".
std::optional<Length> read_skim(const Entry& entry) {
    const Value* value = entry.find("skim");
    if (value && value->text() && *value->text() == "none")
        return std::nullopt;
    return measured<Length>(entry, "skim");
}

/// Inch sizes and fractions may differ from a limit in their last digit [m].
const Length rounding = in_si<Length>(1e-9);

/// The smallest and largest size of the finished bore; the finish diameter lies between them.
std::optional<std::pair<Length, Length>> read_size_limits(const Entry& bore, std::optional<Length> finish) {
    const auto limits = measured_list<Length>(bore, "size_limits");
    if (bore.has("size_limits") && bore.has("size_class"))
        bore.refuse("size_limits", "stands beside size_class", "give the limits in one of the two ways");
    if (limits.size() != 2)
        return std::nullopt;
    if (limits[0] > limits[1])
        bore.refuse("size_limits", "has its smaller size last", "swap the two");
    else if (finish && (*finish < limits[0] - rounding || *finish > limits[1] + rounding))
        bore.refuse("size_limits", "does not hold the finish diameter",
                    "write the smallest and the largest size around finish_diameter");
    return std::pair{limits[0], limits[1]};
}

std::vector<Face> read_faces(const Entry& bore) {
    std::vector<Face> faces;
    for (const Entry& entry : bore.objects("faces")) {
        const auto inner = measured<Length>(entry, "inner");
        const auto outer = measured<Length>(entry, "outer");
        const auto build = measured<Length>(entry, "build");
        if (inner && outer && *inner >= *outer)
            entry.refuse("outer", "is not larger than the inner diameter", "swap the two or measure again");
        if (inner && outer && build)
            faces.push_back({*inner, *outer, *build});
    }
    return faces;
}

std::vector<Groove> read_grooves(const Entry& bore, std::optional<Length> length) {
    std::vector<Groove> grooves;
    for (const Entry& entry : bore.objects("grooves")) {
        const auto diameter = measured<Length>(entry, "diameter");
        const auto width = measured<Length>(entry, "width");
        if (width && length && *width > *length)
            entry.refuse("width", "is wider than the bore is long", "measure it along the bore");
        if (diameter && width)
            grooves.push_back({*diameter, *width});
    }
    return grooves;
}

std::vector<Hole> read_holes(const Entry& bore, std::optional<Length> length) {
    std::vector<Hole> holes;
    for (const Entry& entry : bore.objects("holes")) {
        const auto diameter = measured<Length>(entry, "diameter");
        const auto depth = measured<Length>(entry, "depth");
        const auto clock = measured<Angle>(entry, "clock");
        if (depth && length && *depth > *length)
            entry.refuse("depth", "lies outside the bore", "measure the depth from the near face");
        if (diameter && length && *diameter > *length)
            entry.refuse("diameter", "is wider than the bore is long", "measure the hole again");
        if (diameter && depth && clock)
            holes.push_back({*diameter, *depth, *clock, entry.word("other_end")});
    }
    return holes;
}

void check_boss(const WornBore& bore, const Entry& entry) {
    if (bore.boss_diameter && *bore.boss_diameter <= bore.finish_diameter)
        entry.refuse("boss_diameter", "is not larger than the finish diameter",
                     "measure the outside diameter of the boss");
}

void check_stock(const WornBore& bore, const Entry& entry) {
    if (bore.stock >= bore.finish_diameter / 2.0)
        entry.refuse("stock", "leaves no bore to weld to",
                     "write the stock per side, less than the finish radius");
}

void check_composition(const Entry& entry, const WornBore& bore) {
    double sum = 0;
    for (const auto& [element, percent] : bore.composition) {
        sum += percent;
        if (std::find(element_symbols().begin(), element_symbols().end(), element) == element_symbols().end())
            entry.refuse("composition",
                         fmt::format("names {}, which is no symbol of an element", in_quotes(element)),
                         suggest(element, element_symbols()));
    }
    if (sum > 100)
        entry.refuse("composition", "adds up to more than 100 %",
                     "write percent by mass as the certificate prints it");
}

} // namespace

WornBore read_bore(const Entry& entry) {
    WornBore bore;
    bore.path = entry.path();
    bore.name = entry.text("name").value_or("");
    bore.count = entry.count("count").value_or(1);
    bore.line = entry.text("line");
    bore.axis = entry.word("axis").value_or("");
    bore.base = entry.text("base").value_or("");
    if (bore.base == "unknown")
        bore.base = "steel/unknown"; // until a magnet says otherwise
    bore.magnetic = entry.flag("magnetic");
    bore.composition = entry.named_numbers("composition");
    check_composition(entry, bore);
    const auto finish = measured<Length>(entry, "finish_diameter");
    const auto length = measured<Length>(entry, "length");
    bore.finish_diameter = finish.value_or(Length());
    bore.length = length.value_or(Length());
    bore.size_class = entry.text("size_class");
    bore.size_limits = read_size_limits(entry, finish);
    bore.boss_diameter = measured<Length>(entry, "boss_diameter");
    for (const Entry& plate : entry.objects("attached"))
        if (const auto thickness = measured<Length>(plate, "thickness"))
            bore.attached.push_back(*thickness);
    bore.carry_off = measured<Conductance>(entry, "carry_off");
    bore.heat_wall = measured<Length>(entry, "heat_wall");
    if (const auto worn = entry.object("worn"))
        bore.worn = read_worn(*worn, length).value_or(Worn());
    bore.skim = read_skim(entry);
    const auto stock = measured<Length>(entry, "stock");
    bore.stock = stock.value_or(Length());
    bore.overhang = measured<Length>(entry, "overhang").value_or(Length());
    bore.procedure = entry.text("procedure").value_or("");
    bore.faces = read_faces(entry);
    bore.grooves = read_grooves(entry, length);
    bore.holes = read_holes(entry, length);
    if (finish)
        check_boss(bore, entry);
    if (finish && stock)
        check_stock(bore, entry);
    return bore;
}

} // namespace ringfill
