#include <ringfill/material/family.hpp>

#include <algorithm>

namespace ringfill {
namespace {

Value* member(Value& object, std::string_view name) {
    auto* members = std::get_if<Value::Object>(&object.held);
    if (!members)
        return nullptr;
    const auto found =
        std::find_if(members->begin(), members->end(), [&](const Member& one) { return one.name == name; });
    return found == members->end() ? nullptr : &found->value;
}

void fill_in(Value& row, const Value& usual);

/// Diameters are the row's own to choose: those it has take over what is usual of them, and of any.
void fill_in_diameters(Value& diameters, const Value& usual) {
    auto* sizes = std::get_if<Value::Object>(&diameters.held);
    if (!sizes)
        return;
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
        Value* own = member(row, one.name);
        if (one.name == "diameters_mm" && own)
            fill_in_diameters(*own, one.value);
        else if (own)
            fill_in(*own, one.value);
        else if (one.name != "diameters_mm")
            members->push_back(one);
    }
}

void fill_in_rows(Value& table, std::string_view section, const Value& usual) {
    Value* rows = member(table, section);
    auto* named = rows ? std::get_if<Value::Object>(&rows->held) : nullptr;
    if (!named)
        return;
    for (Member& row : *named) {
        const Value* form = row.value.find("form");
        const std::string kind = section == "bases" ? "bases" : form && form->text() ? *form->text() : "";
        if (const Value* of_kind = usual.find(kind))
            fill_in(row.value, *of_kind);
    }
}

} // namespace

Document with_usual(Document table) {
    if (const Value* usual = table.root.find("usual")) {
        fill_in_rows(table.root, "bases", *usual);
        fill_in_rows(table.root, "fillers", *usual);
    }
    return table;
}

} // namespace ringfill
