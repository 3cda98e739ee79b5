#pragma once

#include <string_view>
#include <vector>

#include <ringfill/document/put_plain.hpp>

namespace ringfill {

/// An object of JSON put behind a text member by member, without blanks: for what would cost much to build as
/// a Value first. Begun when made; end() once, after its members.
class LineObject {
  public:
    explicit LineObject(TextEnd& out) : out_(out) { out_.put('{'); }

    void put(std::string_view name, std::string_view text) {
        begin(name);
        put_text(out_, text);
    }
    void put(std::string_view name, double number) {
        begin(name);
        put_number(out_, number);
    }
    void put(std::string_view name, const std::vector<double>& numbers) {
        begin(name);
        out_.put('[');
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            if (i > 0)
                out_.put(',');
            put_number(out_, numbers[i]);
        }
        out_.put(']');
    }
    /// An object within, which `fill` gives its members.
    template <class Fill>
    void put_object(std::string_view name, Fill fill) {
        begin(name);
        LineObject inner(out_);
        fill(inner);
        inner.end();
    }
    void end() { out_.put('}'); }

  private:
    void begin(std::string_view name) {
        if (any_)
            out_.put(',');
        any_ = true;
        put_text(out_, name);
        out_.put(':');
    }

    TextEnd& out_;
    bool any_ = false;
};

} // namespace ringfill
