#include <ringfill/material/family.hpp>

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

} // namespace

Document with_usual(Document table) {
    const Value* usual = table.root.find("usual");
    if (!usual)
        return table;
    for (Member& section : std::get<Value::Object>(table.root.held)) {
        auto* rows = std::get_if<Value::Object>(&section.value.held);
        if (!rows || (section.name != "bases" && section.name != "fillers"))
            continue;
        for (Member& row : *rows) {
            const Value* form = row.value.find("form");
            const std::string kind = section.name == "bases" ? section.name
                                     : form && form->text()  ? *form->text()
                                                             : "";
            if (const Value* of_kind = usual->find(kind))
                fill_in(row.value, *of_kind);
        }
    }
    return table;
}

} // namespace ringfill
