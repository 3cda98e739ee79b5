#pragma once

#include <span>
#include <string_view>
#include <variant>
#include <vector>

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// Members made an object; a line of text is made of the same ones (put_working_list).
inline constexpr auto make_object = [](auto&&... parts) {
    return object(std::forward<decltype(parts)>(parts)...);
};

/// One number, or a list of them.
using Numbers = std::variant<double, std::span<const double>>;

auto input_members(const Input& input, const auto& make) {
    return make(member<"value">(input.is_list ? Numbers(input.list) : Numbers(input.value)),
                member<"unit">(unless_empty(std::string_view(input.unit))));
}

/// What goes into a formula, by symbol.
struct Inputs {
    const std::vector<Input>& all;

    auto part() const {
        return by_name(all, &Input::symbol,
                       [](const Input& input) { return input_members(input, make_object); });
    }
};

auto working_members(const Working& work, const auto& make) {
    return make(member<"figure">(std::string_view(work.figure)),
                member<"formula">(std::string_view(work.formula)), member<"inputs">(Inputs{work.inputs}),
                member<"value">(work.value), member<"unit">(unless_empty(std::string_view(work.unit))),
                member<"source">(std::string_view(work.source)));
}

inline auto working_object(const Working& work) {
    return working_members(work, make_object);
}

/// Workings as a list put behind a text, without blanks: no tree of them all is made.
void put_working_list(JsonText& line, const std::vector<Working>& workings);

} // namespace ringfill
