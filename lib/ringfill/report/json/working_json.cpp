#include <ringfill/report/json/blocks.hpp>

#include <string_view>
#include <utility>

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/members.hpp>

namespace ringfill {
namespace {

/// An object of JSON put behind a text member by member, without blanks: for what would cost much to build as
/// a Value first. Begun when made; end() once, after its members.
class LineObject {
  public:
    explicit LineObject(JsonText& out) : out_(out) { out_.push_back('{'); }

    void put(std::string_view name, std::string_view text) {
        begin(name);
        append_text(out_, text);
    }
    void put(std::string_view name, double number) {
        begin(name);
        append_number(out_, number);
    }
    void put(std::string_view name, const std::vector<double>& numbers) {
        begin(name);
        char before = '[';
        for (const double number : numbers) {
            out_.push_back(std::exchange(before, ','));
            append_number(out_, number);
        }
        out_.append(std::string_view(numbers.empty() ? "[]" : "]"));
    }
    /// An object within, which `fill` gives its members.
    template <class Fill>
    void put_object(std::string_view name, Fill fill) {
        begin(name);
        LineObject inner(out_);
        fill(inner);
        inner.end();
    }
    void end() { out_.push_back('}'); }

  private:
    void begin(std::string_view name) {
        if (out_[out_.size() - 1] != '{')
            out_.push_back(',');
        append_text(out_, name);
        out_.push_back(':');
    }

    JsonText& out_;
};

/// Takes members as LineObject does and keeps them as a Value.
struct ValueObject {
    Value::Object members;

    void put(std::string_view name, auto value) {
        members.push_back({std::string(name), Value(std::move(value))});
    }
    void put(std::string_view name, const std::vector<double>& numbers) {
        put(name, Value::List(numbers.begin(), numbers.end()));
    }
    void put_object(std::string_view name, auto fill) {
        ValueObject inner;
        fill(inner);
        put(name, std::move(inner.members));
    }
};

void put_inputs(auto& inputs, const std::vector<Input>& all) {
    for (const Input& input : all)
        inputs.put_object(input.symbol, [&](auto& object) {
            input.is_list ? object.put("value", input.list) : object.put("value", input.value);
            if (!input.unit.empty())
                object.put("unit", input.unit);
        });
}

void put_working(auto& object, const Working& work) {
    object.put("figure", work.figure);
    object.put("formula", work.formula);
    object.put_object("inputs", [&](auto& inputs) { put_inputs(inputs, work.inputs); });
    object.put("value", work.value);
    if (!work.unit.empty())
        object.put("unit", work.unit);
    object.put("source", work.source);
}

} // namespace

Value::Object inputs_object(const std::vector<Input>& inputs) {
    ValueObject object;
    put_inputs(object, inputs);
    return std::move(object.members);
}

Value::List working_list(const std::vector<Working>& workings) {
    return list_of(workings, [](const Working& work) {
        ValueObject object;
        put_working(object, work);
        return std::move(object.members);
    });
}

void put_working_list(JsonText& line, const std::vector<Working>& workings) {
    for (const Working& work : workings) {
        line.push_back(&work == &workings.front() ? '[' : ',');
        LineObject object(line);
        put_working(object, work);
        object.end();
    }
    line.append(std::string_view(workings.empty() ? "[]" : "]"));
}

} // namespace ringfill
