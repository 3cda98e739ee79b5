#include <ringfill/report/json/working_json.hpp>

#include <utility>

namespace ringfill {
namespace {

/// Puts members behind a text as an object without blanks: for what would cost much to build as a Value
/// first. The first is always there.
class LineOf {
  public:
    explicit LineOf(JsonText& out) : out_(out) {}

    void operator()(const auto&... parts) const {
        char before = '{';
        (put_member(before, parts.key(), parts.value), ...);
        out_.push_back('}');
    }
    template <class All, class PutOne>
    void put_all(char open, const All& all, char close, PutOne put_one) const {
        out_.push_back(open);
        for (const auto& one : all) {
            if (&one != &*all.begin())
                out_.push_back(',');
            put_one(one);
        }
        out_.push_back(close);
    }

  private:
    void put_member(char& before, std::string_view key, const auto& value) const {
        if constexpr (requires { value.has_value(); }) {
            if (value)
                put_member(before, key, *value);
        } else {
            put_key(std::exchange(before, ','), key);
            put(value);
        }
    }
    /// In one piece, for most texts of a plan are keys; they hold nothing that is escaped.
    void put_key(char before, std::string_view key) const {
        const std::size_t begin = out_.size();
        out_.resize(begin + key.size() + 4);
        char* const at = out_.data() + begin;
        at[0] = before;
        at[1] = '"';
        key.copy(at + 2, key.size());
        at[key.size() + 2] = '"';
        at[key.size() + 3] = ':';
    }
    void put(std::string_view text) const { append_text(out_, text); }
    void put(double number) const { append_number(out_, number); }
    void put(const Numbers& numbers) const {
        if (const double* number = std::get_if<double>(&numbers))
            put(*number);
        else
            put_all('[', std::get<1>(numbers), ']', [&](double one) { put(one); });
    }
    void put(const Inputs& inputs) const {
        put_all('{', inputs.all, '}', [&](const Input& input) {
            append_text(out_, input.symbol);
            out_.push_back(':');
            input_members(input, *this);
        });
    }

    JsonText& out_;
};

} // namespace

void put_working_list(JsonText& line, const std::vector<Working>& workings) {
    const LineOf put(line);
    put.put_all('[', workings, ']', [&](const Working& work) { working_members(work, put); });
}

} // namespace ringfill
