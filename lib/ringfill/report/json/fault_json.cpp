#include <ringfill/report/json/fault_json.hpp>

#include <string>
#include <string_view>
#include <utility>

namespace ringfill {
namespace {

std::string_view in_a_word(std::optional<Origin> origin) {
    if (!origin)
        return "program";
    switch (*origin) {
    case Origin::job:
        return "job";
    case Origin::command_line:
        return "command_line";
    case Origin::table:
        return "table";
    case Origin::file:
        return "file";
    }
    return "program";
}

Value fault_object(Fault fault) {
    Value::Object object;
    if (!fault.place.path.empty())
        object.push_back({"path", fault.place.path});
    if (fault.place.column > 0)
        object.push_back({"column", static_cast<double>(fault.place.column)});
    if (!fault.value.empty())
        object.push_back({"value", fault.value});
    object.push_back({"reason", fault.reason});
    if (!fault.remedy.empty())
        object.push_back({"remedy", fault.remedy});
    fault.excerpt.clear(); // the line is at hand for whoever sent it
    object.push_back({"text", to_string(fault)});
    return object;
}

} // namespace

Value fault_document(std::size_t line, std::optional<Origin> origin, const std::vector<Fault>& faults) {
    Value::List list;
    for (const Fault& fault : faults)
        list.push_back(fault_object(fault));
    return Value::Object{{"format", "ringfill-fault/1"},
                         {"line", static_cast<double>(line)},
                         {"origin", in_a_word(origin)},
                         {"faults", std::move(list)}};
}

} // namespace ringfill
