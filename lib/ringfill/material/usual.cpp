#include <ringfill/material/family.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

void fill_in(Value& row, const Value& usual);

/// Diameters are the row's own to choose: those it has take over what is usual of them, and of any.
void fill_in_diameters(Value& diameters, const Value& usual) {
    if (auto* sizes = std::get_if<Value::Object>(&diameters.held))
        for (Member& size : *sizes)
            for (const std::string_view whose : {std::string_view(size.name), std::string_view("any")})
                if (const Value* of_size = usual.find(whose))
                    fill_in(size.value, *of_size);
}

/// Adds the members that a row does not have; goes into objects that both have.
void fill_in(Value& row, const Value& usual) {
    auto* members = std::get_if<Value::Object>(&row.held);
    if (!members || !usual.object())
        return;
    for (const Member& one : *usual.object()) {
        const auto own = ranges::find(*members, one.name, &Member::name);
        const bool has = own != members->end();
        if (one.name != "diameters_mm")
            has ? fill_in(own->value, one.value) : members->push_back(one);
        else if (has)
            fill_in_diameters(own->value, one.value);
    }
}

/// The kind of a row as `usual` names it: bases, or the form of a filler; empty: none is usual of it.
std::string kind_of(std::string_view section, const Value& row) {
    if (section == "bases")
        return "bases";
    const Value* form = section == "fillers" ? row.find("form") : nullptr;
    return form && form->text() ? *form->text() : "";
}

/// Whether some row of a table leaves out what is usual of its kind.
bool fills_a_row(const Value& root, const Member& of_kind, const Member& usual) {
    for (const std::string_view section : {"bases", "fillers"}) {
        const Value* rows = root.find(section);
        if (!rows || !rows->object())
            continue;
        for (const Member& row : *rows->object())
            if (kind_of(section, row.value) == of_kind.name) {
                const Value* own = row.value.find(usual.name);
                if (usual.name == "diameters_mm" ? own != nullptr : !own || own->object())
                    return true;
            }
    }
    return false;
}

} // namespace

void refuse_idle_usual(const Document& table) {
    const Value* usual = table.root.find("usual");
    if (!usual || !usual->object())
        return;
    std::vector<Fault> faults;
    for (const Member& kind : *usual->object())
        if (kind.value.object())
            for (const Member& one : *kind.value.object())
                if (!fills_a_row(table.root, kind, one))
                    faults.push_back(fault_at(table, one.name_begin,
                                              fmt::format("usual.{}.{}", kind.name, one.name), {},
                                              "fills no row of this file, and never those of another",
                                              "write the rows that you change whole, or take it out"));
    refuse_if_any(Origin::table, faults);
}

Document with_usual(Document table) {
    const Value* usual = table.root.find("usual");
    if (!usual)
        return table;
    for (Member& section : std::get<Value::Object>(table.root.held)) {
        auto* rows = std::get_if<Value::Object>(&section.value.held);
        if (!rows || (section.name != "bases" && section.name != "fillers"))
            continue;
        for (Member& row : *rows)
            if (const Value* of_kind = usual->find(kind_of(section.name, row.value)))
                fill_in(row.value, *of_kind);
    }
    return table;
}

} // namespace ringfill
