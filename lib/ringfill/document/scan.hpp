#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/document/parse.hpp>

namespace ringfill {

/// Why a text is no JSON, or more of it than is read.
enum class Broken {
    nothing,
    syntax,
    ends_early,
    goes_on, ///< after the end of the value
    too_deep,
    too_long, ///< a text
    too_many_values,
    too_many_members,
};

/// Reads a text as JSON in one pass, into a tree that knows the place of each key and value. Comments and
/// trailing commas are read over.
class Scanner {
  public:
    static constexpr std::size_t longest_key = 4'096;
    static constexpr std::size_t longest_text = 1'000'000;
    static constexpr std::size_t most_members = 2'000; ///< of one object

    Scanner(Document& document, std::vector<Fault>& faults, const DocumentLimits& limits)
        : document_(document), faults_(faults), text_(document.text), depth_left_(limits.depth),
          values_left_(limits.values) {}

    /// Reads the whole text; a key met twice and a number that is not finite are faults, and are read over.
    /// What breaks the reading is told by broken(), at offset().
    bool read();

    Broken broken() const { return broken_; }
    std::size_t offset() const { return at_; }
    bool is_in_text() const { return is_in_text_; }
    /// The path of the value that was being read.
    std::string path() const;

  private:
    /// An object or list whose end has not been read yet.
    struct Open {
        bool is_list;
        std::size_t index = 0; ///< of the element being read
        std::string key = {};  ///< of the member being read
    };

    /// Where the names of an object of many members stand.
    using Places = std::map<std::string, std::size_t, std::less<>>;

    bool stop(Broken why, std::size_t offset);
    /// Whether a comment begins there that is not closed.
    bool is_open_comment(std::size_t begin) const;
    bool skip_blanks();
    bool skip_blanks_before_more() { return skip_blanks() && (at_ < text_.size() || stop_at_end()); }
    bool stop_at_end() { return stop(Broken::ends_early, text_.size()); }
    bool sign(char wanted);
    bool value(Value& to);
    bool held(Value& to);
    bool literal(Value& to, std::string_view word);
    bool number(Value& to);
    bool digits(Broken at_end);
    bool list(Value& to);
    bool object(Value& to);
    template <class Held, class ReadOne>
    bool bracketed(Value& to, char close, ReadOne read_one);
    bool member(Value::Object& members, Places& places);
    static std::size_t first_place(const Value::Object& members, Places& places);
    bool text(std::string& to, std::size_t longest);
    bool stop_at_sign();
    bool escape(std::string& to);
    bool hex(std::size_t u, std::uint32_t& unit);
    bool is_taken_at_once(std::size_t u) const;
    bool count(std::size_t offset);

    Document& document_;
    std::vector<Fault>& faults_;
    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t depth_left_;
    std::size_t values_left_;
    bool has_too_many_members_ = false;
    bool is_in_text_ = false;
    std::size_t text_begin_ = 0; ///< of the text being read
    Broken broken_ = Broken::nothing;
    std::vector<Open> open_;
};

} // namespace ringfill
