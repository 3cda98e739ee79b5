#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <type_traits>
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

    Value() = default;
    /// Of a flag, a number, a text, a list or an object, or what is one of the last two.
    template <class Held>
    requires std::disjunction_v<std::is_same<Held, bool>, std::is_same<Held, double>,
                                std::is_same<Held, std::string>, std::is_base_of<List, Held>,
                                std::is_base_of<Object, Held>>
    Value(Held value) : held(std::move(value)) {}
    Value(std::string_view text);
    Value(const char* text);

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
    std::size_t name_begin = 0; ///< in the text, at its quote; 0 if it was not read
};

// Here, where a member is complete: a variant asks for it.
inline Value::Value(std::string_view text) : held(std::string(text)) {}
inline Value::Value(const char* text) : held(std::string(text)) {}

/// What a value is, in words a person uses: "a text", "a number", "a list".
std::string_view kind_in_words(const Value& value);

} // namespace ringfill
