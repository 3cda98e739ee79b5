#include <ringfill/report/json/blocks.hpp>

#include <utility>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/document/line_object.hpp>

namespace ringfill {
namespace {

/// Takes members as LineObject does and keeps them as a Value.
class ValueObject {
  public:
    void put(std::string_view name, std::string_view text) { members_.push_back({std::string(name), text}); }
    void put(std::string_view name, double number) { members_.push_back({std::string(name), number}); }
    void put(std::string_view name, const std::vector<double>& numbers) {
        members_.push_back({std::string(name), Value(numbers | ranges::to<Value::List>())});
    }
    template <class Fill>
    void put_object(std::string_view name, Fill fill) {
        ValueObject inner;
        fill(inner);
        members_.push_back({std::string(name), inner.take()});
    }
    Value take() { return Value(std::move(members_)); }

  private:
    Value::Object members_;
};

template <class Object>
void put_inputs(Object& inputs, const std::vector<Input>& all) {
    for (const Input& input : all)
        inputs.put_object(input.symbol, [&](Object& object) {
            if (input.is_list)
                object.put("value", input.list);
            else
                object.put("value", input.value);
            if (!input.unit.empty())
                object.put("unit", input.unit);
        });
}

template <class Object>
void put_working(Object& object, const Working& work) {
    object.put("figure", work.figure);
    object.put("formula", work.formula);
    object.put_object("inputs", [&](Object& inputs) { put_inputs(inputs, work.inputs); });
    object.put("value", work.value);
    if (!work.unit.empty())
        object.put("unit", work.unit);
    object.put("source", work.source);
}

Value working_object(const Working& work) {
    ValueObject object;
    put_working(object, work);
    return object.take();
}

} // namespace

Value inputs_object(const std::vector<Input>& inputs) {
    ValueObject object;
    put_inputs(object, inputs);
    return object.take();
}

Value working_list(const std::vector<Working>& workings) {
    return Value(workings | ranges::views::transform(working_object) | ranges::to<Value::List>());
}

void put_working_list(TextEnd& out, const std::vector<Working>& workings) {
    out.put('[');
    for (const Working& work : workings) {
        if (&work != &workings.front())
            out.put(',');
        LineObject object(out);
        put_working(object, work);
        object.end();
    }
    out.put(']');
}

} // namespace ringfill
