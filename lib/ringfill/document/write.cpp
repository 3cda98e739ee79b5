#include <ringfill/document/write.hpp>

#include <range/v3/algorithm/all_of.hpp>

namespace ringfill {
namespace {

bool is_plain(const Value& value) {
    return !value.list() && !value.object();
}

/// Writes values either laid out for people or all on one line.
class Writer {
  public:
    Writer(JsonText& text, bool on_one_line) : out_(text), on_one_line_(on_one_line) {}

    void write(const Value& value, std::size_t depth) {
        const auto element = [&](const Value& one) { write(one, depth + 1); };
        const auto member = [&](const Member& one) {
            append_text(out_, one.name);
            put(on_one_line_ ? ":" : ": ");
            write(one.value, depth + 1);
        };
        if (const auto* list = value.list())
            write_all('[', *list, ']', depth, on_one_line_ || ranges::all_of(*list, is_plain), element);
        else if (const auto* members = value.object())
            write_all('{', *members, '}', depth, on_one_line_ || members->empty(), member);
        else if (const auto* text = value.text())
            append_text(out_, *text);
        else if (const auto* number = value.number())
            append_number(out_, *number);
        else if (const auto* flag = value.flag())
            put(*flag ? "true" : "false");
        else
            put("null");
    }

  private:
    template <class All, class WriteOne>
    void write_all(char open, const All& all, char close, std::size_t depth, bool is_short,
                   WriteOne write_one) {
        out_.push_back(open);
        for (const auto& one : all) {
            if (&one != &all.front())
                put(is_short && !on_one_line_ ? ", " : ",");
            if (!is_short)
                break_line(depth + 1);
            write_one(one);
        }
        if (!is_short)
            break_line(depth);
        out_.push_back(close);
    }

    void put(std::string_view signs) { out_.append(signs); }
    void break_line(std::size_t depth) { put('\n' + std::string(2 * depth, ' ')); }

    JsonText& out_;
    bool on_one_line_;
};

} // namespace

std::string write_number(double number) {
    JsonText text;
    append_number(text, number);
    return fmt::to_string(text);
}

std::string write_json(const Value& value) {
    JsonText text;
    Writer(text, false).write(value, 0);
    return fmt::to_string(text) + '\n';
}

std::string write_json_line(const Value& value) {
    JsonText text;
    append_json(text, value);
    return fmt::to_string(text) + '\n';
}

void append_json(JsonText& to, const Value& value) {
    Writer(to, true).write(value, 0);
}

} // namespace ringfill
