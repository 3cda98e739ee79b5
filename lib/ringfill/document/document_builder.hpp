#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include <boost/json/error.hpp>
#include <boost/json/string_view.hpp>

#include <ringfill/document/document.hpp>

namespace ringfill {

/// Builds a document's tree of values from the events of boost::json::basic_parser, with the place of each
/// key and value. The events carry no places: whoever feeds the parser keeps `token` at the first byte of the
/// token being read, and `chunk_begin` and `chunk_end` around the bytes being fed.
class DocumentBuilder {
  public:
    static constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
    // Bounds that boost::json::basic_parser asks of its handler.
    static constexpr std::size_t max_object_size = nowhere;
    static constexpr std::size_t max_array_size = nowhere;
    static constexpr std::size_t max_key_size = 4'096;
    static constexpr std::size_t max_string_size = 1'000'000;
    static constexpr std::size_t most_members = 2'000; ///< of one object

    DocumentBuilder(Document& built, std::vector<Fault>& found, std::size_t most_values)
        : document_(built), faults_(found), values_left_(most_values) {}

    std::size_t token = nowhere;
    std::size_t chunk_begin = 0;
    std::size_t chunk_end = 0;
    bool too_many = false;         ///< the limit of values was reached
    bool too_many_members = false; ///< an object has more than most_members

    /// The path of the value now being read.
    std::string path() const;

    using error_code = boost::json::error_code;
    using string_view = boost::json::string_view;
    bool on_document_begin(error_code&) { return true; }
    bool on_document_end(error_code&) { return true; }
    bool on_object_begin(error_code& ec) { return open(Value(Value::Object{}), ec); }
    bool on_array_begin(error_code& ec) { return open(Value(Value::List{}), ec); }
    bool on_object_end(std::size_t, error_code&) { return close(); }
    bool on_array_end(std::size_t, error_code&) { return close(); }
    bool on_key_part(string_view s, std::size_t, error_code&) { return append(s); }
    bool on_key(string_view s, std::size_t, error_code&);
    bool on_string_part(string_view s, std::size_t, error_code&) { return append(s); }
    bool on_string(string_view s, std::size_t, error_code& ec);
    bool on_number_part(string_view, error_code&) { return true; }
    bool on_int64(std::int64_t i, string_view, error_code& ec) { return number(static_cast<double>(i), ec); }
    bool on_uint64(std::uint64_t u, string_view, error_code& ec) {
        return number(static_cast<double>(u), ec);
    }
    bool on_double(double d, string_view, error_code& ec) { return number(d, ec); }
    bool on_bool(bool b, error_code& ec) { return add(Value(b), chunk_end, ec); }
    bool on_null(error_code& ec) { return add(Value(), chunk_end, ec); }
    bool on_comment_part(string_view, error_code&) { return true; }
    bool on_comment(string_view, error_code&) { return true; }

  private:
    /// An object or list whose end has not been read yet.
    struct Open {
        Value value;
        bool is_list = false;
        std::string key_within; ///< the key whose value is open inside this object
        std::size_t key_begin = 0;
    };

    bool append(string_view s);
    bool number(double d, error_code& ec);
    bool open(Value value, error_code& ec);
    bool close();
    bool add(Value value, std::size_t end, error_code& ec);
    bool count(error_code& ec);
    void put(Value value);
    void put_member(Value::Object& members, Value value);

    Document& document_;
    std::vector<Fault>& faults_;
    std::size_t values_left_;
    std::vector<Open> open_;
    std::string key_;
    std::size_t key_begin_ = 0;
    std::string text_;
};

} // namespace ringfill
