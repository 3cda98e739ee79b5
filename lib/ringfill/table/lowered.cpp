#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/table/lowered.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

/// A field that safety hangs on, wherever it stands in a row.
struct SafetyField {
    std::string_view name;
    std::string_view words;
    std::string_view unit;
    Safer safer;
    bool none_is_safe = false; ///< a row without it is the more careful one
};

constexpr SafetyField safety_fields[] = {
    {"interpass_max_degC", maximum_words, "degC", Safer::low},
    {"gives_way_to_degC", "end up to which the maximum between rings gives way", "degC", Safer::low, true},
    {"softens_over_degC", "temperature over which it softens", "degC", Safer::low},
    {"tempering_degC", "tempering temperature", "degC", Safer::low},
    {"cool_to_degC", "temperature to cool to before its treatment", "degC", Safer::low},
    {"rough_below_degC", "temperature to rough under", "degC", Safer::low},
    {"finish_below_degC", "temperature to finish and measure under", "degC", Safer::low},
    {"flow_L_min_per_mm", "gas for each millimetre of wire", "L/min", Safer::high},
    {"hydrogen_ml_100g", "hydrogen", "ml/100 g", Safer::high},
    {"hydrogen_up_to_ml_100g", "hydrogen up to which a preheat holds", "ml/100 g", Safer::unchanged},
    {"hydrogen_over_ml_100g", "hydrogen over which a preheat holds", "ml/100 g", Safer::unchanged},
    {"heat_input_from_kJ_mm", "heat input from which a preheat holds", "kJ/mm", Safer::unchanged},
    {"hardness_max_HV", "hardness allowed", "HV", Safer::low},
    {"hardness_after_treatment_max_HV", "hardness allowed after treatment", "HV", Safer::low},
    {"mg_m3", "limit of the air", "mg/m³", Safer::low},
    {"from", "figure that makes a caution apply", "", Safer::low, true},
    {"under", "figure up to which a caution applies", "", Safer::high, true},
    {"hardenable", "whether it turns hard", "", Safer::set},
    {"quenched", "whether it is quenched", "", Safer::set},
    {"never_quenched", "whether nothing softens it", "", Safer::unset},
    {"only_if_named", "whether its preheat waits until a job names it", "", Safer::unset},
    {"hold_is_ruled", "whether it goes without a hold for hydrogen", "", Safer::unset},
    {"sprays", "whether a wire sprays in it", "", Safer::unset},
};

/// Names of what else a row goes by; one that is gone is less careful.
constexpr std::string_view name_lists[] = {"preheat_groups", "listed_in"};
constexpr std::string_view compositions[] = {"composition_pct", "typical_pct"};
/// From the least careful.
constexpr std::string_view verdicts[] = {"recommended", "with_buffer", "not_advised"};

bool flag_of(const Value* value) {
    const bool* flag = value ? value->flag() : nullptr;
    return flag && *flag;
}

void compare_field(const Comparison& at, const SafetyField& field, const Value* ours, const Value* theirs) {
    if (field.safer == Safer::set || field.safer == Safer::unset) {
        const bool sets = field.name == "sprays"; // which a gas does unless it says otherwise
        const bool own = ours ? flag_of(ours) : sets;
        const bool their = theirs ? flag_of(theirs) : sets;
        if (own != their && their == (field.safer == Safer::unset))
            at.add(field.words, field.unit, own, their);
        return;
    }
    const auto own = number_of(ours);
    const auto their = number_of(theirs);
    if (is_less_careful(own, their, field.safer, field.none_is_safe))
        at.add(field.words, field.unit, as_value(own), as_value(their));
}

std::vector<std::string> names_in(const Value* value) {
    std::vector<std::string> names;
    if (const Value::List* list = value ? value->list() : nullptr)
        for (const Value& one : *list) {
            const Value::List* pair = one.list();
            const std::string* name = pair && !pair->empty() ? pair->front().text() : one.text();
            if (name)
                names.push_back(*name);
        }
    return names;
}

void compare_names(const Comparison& at, const Value* ours, const Value* theirs) {
    const std::vector<std::string> kept = names_in(theirs);
    for (const std::string& name : names_in(ours))
        if (!ranges::contains(kept, name))
            at.add("table of preheat", "", name, Value());
}

void compare_verdicts(const Comparison& at, const Value* ours, const Value* theirs) {
    if (!ours || !theirs || !ours->text() || !theirs->text())
        return;
    if (ranges::find(verdicts, *theirs->text()) < ranges::find(verdicts, *ours->text()))
        at.add("verdict on the pair", "", *ours, *theirs);
}

void compare(const Comparison& at, std::string_view name, const Value* ours, const Value* theirs);

const Value* member_of(const Value* object, std::string_view name) {
    return object ? object->find(name) : nullptr;
}

/// The names of the members of both, each once.
std::vector<std::string_view> names_of_both(const Value* ours, const Value* theirs) {
    std::vector<std::string_view> names;
    for (const Value* one : {ours, theirs})
        if (one && one->object())
            for (const Member& member : *one->object())
                if (!ranges::contains(names, member.name))
                    names.push_back(member.name);
    return names;
}

void compare_members(const Comparison& at, std::string_view name, const Value* ours, const Value* theirs) {
    for (const std::string_view member : names_of_both(ours, theirs)) {
        const Value* own = member_of(ours, member);
        const Value* their = member_of(theirs, member);
        if (name == "if" && own && !their)
            at.at(member).add("circumstance of a caution", "", Value(member), Value());
        else if (name == "if" && !own)
            continue; // one more only makes it apply more often
        else if (ranges::contains(compositions, name))
            compare_field(at.at(member), {member, "share it may hold", "%", Safer::high}, own, their);
        else
            compare(at.at(member), member, own, their);
    }
}

void compare(const Comparison& at, std::string_view name, const Value* ours, const Value* theirs) {
    if (compare_steps(at, name, ours, theirs))
        return;
    if (const auto* field = ranges::find(safety_fields, name, &SafetyField::name);
        field != std::end(safety_fields))
        return compare_field(at, *field, ours, theirs);
    if (ranges::contains(name_lists, name))
        return compare_names(at, ours, theirs);
    if (name == "verdict")
        return compare_verdicts(at, ours, theirs);
    compare_members(at, name, ours, theirs);
    if (name == "limits" && ours && ours->list()) // of the air, by agency
        for (std::size_t i = 0; i < ours->list()->size(); ++i)
            compare(at, {}, &(*ours->list())[i],
                    theirs && theirs->list() && i < theirs->list()->size() ? &(*theirs->list())[i] : nullptr);
}

} // namespace

/// The number of a figure with its source; of a range the upper end.
std::optional<double> number_of(const Value* value) {
    if (!value)
        return std::nullopt;
    if (const double* plain = value->number())
        return *plain;
    const Value::List* list = value->list();
    if (!list || list->size() < 2)
        return std::nullopt;
    const double* number = (*list)[list->size() - 2].number();
    return number ? std::optional(*number) : std::nullopt;
}

Value as_value(const std::optional<double>& number) {
    return number ? Value(*number) : Value();
}

bool is_less_careful(const std::optional<double>& ours, const std::optional<double>& theirs, Safer safer,
                     bool none_is_safe) {
    if (safer == Safer::unchanged)
        return ours != theirs;
    if (!ours || !theirs)
        return none_is_safe ? theirs.has_value() && !ours : ours.has_value() && !theirs;
    return safer == Safer::high ? *theirs < *ours : *theirs > *ours;
}

std::vector<LoweredFigure> lowered_figures(std::string_view row, const Value& ours, const Value& theirs) {
    std::vector<LoweredFigure> found;
    const bool is_figure = !ours.object() && !theirs.object();
    compare({is_figure ? std::string(row) : std::string(), &found}, is_figure ? row : std::string_view(),
            &ours, &theirs);
    return found;
}

} // namespace ringfill
