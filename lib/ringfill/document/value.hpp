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

    std::variant<std::nullptr_t, bool, double, std::string, List, Object> held = nullptr;
    std::size_t begin = 0;
    std::size_t end = 0;

    Value() = default;
    Value(bool flag) : held(flag) {}
    Value(double number) : held(number) {}
    Value(std::string text) : held(std::move(text)) {}
    Value(std::string_view text) : held(std::string(text)) {}
    Value(const char* text) : held(std::string(text)) {}
    Value(List list) : held(std::move(list)) {}
    Value(Object object) : held(std::move(object)) {}

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
    std::size_t name_begin = 0;
};

/// What a value is, in words a person uses: "a text", "a number", "a list".
std::string_view kind_in_words(const Value& value);

} // namespace ringfill
