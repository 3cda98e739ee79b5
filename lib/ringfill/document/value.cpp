#include <ringfill/document/value.hpp>

#include <array>

namespace ringfill {

const Value* Value::find(std::string_view name) const {
    if (const Object* members = object())
        for (const Member& member : *members)
            if (member.name == name)
                return &member.value;
    return nullptr;
}

std::string_view kind_in_words(const Value& value) {
    static constexpr std::array<std::string_view, 6> words = {"null",   "true or false", "a number",
                                                              "a text", "a list",        "an object"};
    return words[value.held.index()];
}

} // namespace ringfill
