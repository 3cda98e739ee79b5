#include <ringfill/document/write.hpp>

#include <range/v3/algorithm/all_of.hpp>

#include <ringfill/document/put_plain.hpp>

namespace ringfill {
namespace {

bool is_plain(const Value& value) {
    return !value.list() && !value.object();
}

/// Writes values either laid out for people or all on one line.
class Writer {
  public:
    Writer(std::string& text, bool on_one_line) : out_(text), on_one_line_(on_one_line) {}

    void write(const Value& value, std::size_t depth) {
        if (const auto* list = value.list())
            write_list(*list, depth);
        else if (const auto* members = value.object())
            write_object(*members, depth);
        else if (const auto* text = value.text())
            put_text(out_, *text);
        else if (const auto* number = value.number())
            put_number(out_, *number);
        else if (const auto* flag = value.flag())
            out_.put(*flag ? std::string_view("true") : std::string_view("false"));
        else
            out_.put("null");
    }

  private:
    void write_list(const Value::List& list, std::size_t depth) {
        const bool short_list = on_one_line_ || ranges::all_of(list, is_plain);
        out_.put('[');
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (i > 0)
                out_.put(short_list && !on_one_line_ ? std::string_view(", ") : std::string_view(","));
            if (!short_list)
                break_line(depth + 1);
            write(list[i], depth + 1);
        }
        if (!short_list)
            break_line(depth);
        out_.put(']');
    }

    void write_object(const Value::Object& members, std::size_t depth) {
        out_.put('{');
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (i > 0)
                out_.put(',');
            break_line(depth + 1);
            put_text(out_, members[i].name);
            out_.put(on_one_line_ ? std::string_view(":") : std::string_view(": "));
            write(members[i].value, depth + 1);
        }
        if (!members.empty())
            break_line(depth);
        out_.put('}');
    }

    void break_line(std::size_t depth) {
        if (on_one_line_)
            return;
        out_.put('\n');
        out_.put(2 * depth, ' ');
    }

    TextEnd out_;
    bool on_one_line_;
};

} // namespace

std::string write_number(double number) {
    std::string text;
    {
        TextEnd out(text);
        put_number(out, number);
    }
    return text;
}

std::string write_json(const Value& value) {
    std::string text;
    Writer(text, false).write(value, 0);
    text += '\n';
    return text;
}

std::string write_json_line(const Value& value) {
    std::string text;
    append_json(text, value);
    text += '\n';
    return text;
}

void append_json(std::string& text, const Value& value) {
    Writer(text, true).write(value, 0);
}

} // namespace ringfill
