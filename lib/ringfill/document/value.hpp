#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace ringfill {

struct Member;

/// A JSON value. One that was read knows the bytes of the text it came from; one made to be written has none.
struct Value {
    using List = std::vector<Value>;
    using Object = std::vector<Member>; ///< in the order of the text

    std::variant<std::nullptr_t, bool, double, std::string, List, Object> held;
    std::size_t begin = 0;
    std::size_t end = 0;

    Value();
    Value(bool flag);
    Value(double number);
    Value(std::string text);
    Value(std::string_view text);
    Value(const char* text);
    Value(List list);
    Value(Object object);

    const std::string* text() const { return std::get_if<std::string>(&held); }
    const double* number() const { return std::get_if<double>(&held); }
    const bool* flag() const { return std::get_if<bool>(&held); }
    const List* list() const { return std::get_if<List>(&held); }
    const Object* object() const { return std::get_if<Object>(&held); }

    /// The member of that name of an object; null for another value or an absent member.
    const Value* find(std::string_view name) const;
};

/// A name and its value in an object.
struct Member {
    std::string name;
    Value value;
    std::size_t name_begin = 0; ///< in the text, its quotes included; both 0 if it was not read
    std::size_t name_end = 0;
};

// Here, where both types are whole.
inline Value::Value() = default;
inline Value::Value(bool flag) : held(flag) {}
inline Value::Value(double number) : held(number) {}
inline Value::Value(std::string text) : held(std::move(text)) {}
inline Value::Value(std::string_view text) : held(std::string(text)) {}
inline Value::Value(const char* text) : held(std::string(text)) {}
inline Value::Value(List list) : held(std::move(list)) {}
inline Value::Value(Object object) : held(std::move(object)) {}

/// What a value is, in words a person uses: "a text", "a number", "a list".
std::string_view kind_in_words(const Value& value);

} // namespace ringfill
