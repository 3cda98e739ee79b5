#include <ringfill/report/working_json.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

// Members are made one by one and moved: a braced list of them would copy every text, and workings are most
// of a plan's text.
Value input_object(const Input& input) {
    Value::Object object;
    object.reserve(2);
    if (input.is_list)
        object.push_back({"value", Value(input.list | ranges::to<Value::List>())});
    else
        object.push_back({"value", input.value});
    if (!input.unit.empty())
        object.push_back({"unit", input.unit});
    return object;
}

} // namespace

Value working_object(const Working& work) {
    Value::Object object;
    object.reserve(6);
    object.push_back({"figure", work.figure});
    object.push_back({"formula", work.formula});
    object.push_back({"inputs", inputs_object(work.inputs)});
    object.push_back({"value", work.value});
    if (!work.unit.empty())
        object.push_back({"unit", work.unit});
    object.push_back({"source", work.source});
    return object;
}

Value inputs_object(const std::vector<Input>& inputs) {
    Value::Object object;
    object.reserve(inputs.size());
    for (const Input& input : inputs)
        object.push_back({input.symbol, input_object(input)});
    return object;
}

Value working_list(const std::vector<Working>& workings) {
    return Value(workings | ranges::views::transform(working_object) | ranges::to<Value::List>());
}

} // namespace ringfill
