#include <string_view>

#include <ringfill/report/json/json.hpp>
#include <ringfill/report/json/members.hpp>

namespace ringfill {
namespace {

constexpr std::string_view origins[] = {"job", "command_line", "table", "file"}; // as Origin

Value::Object fault_object(Fault fault) {
    fault.excerpt.clear(); // the line is at hand for whoever sent it
    return object(member<"path">(unless_empty(fault.place.path)),
                  member<"column">(when(fault.place.column > 0, fault.place.column)),
                  member<"value">(unless_empty(fault.value)), member<"reason">(fault.reason),
                  member<"remedy">(unless_empty(fault.remedy)), member<"text">(to_string(fault)));
}

} // namespace

Value fault_document(std::size_t line, std::optional<Origin> origin, const std::vector<Fault>& faults) {
    const auto word = origin ? origins[static_cast<std::size_t>(*origin)] : "program";
    return object(member<"format">("ringfill-fault/1"), member<"line">(line), member<"origin">(word),
                  member<"faults">(list_of(faults, fault_object)));
}

} // namespace ringfill
