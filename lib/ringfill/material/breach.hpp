#pragma once

#include <string>
#include <string_view>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

/// A rule of the interface that a plugin broke, or its refusal. Thrown within the host only, never into a
/// plugin.
struct Breach {
    std::string what; ///< as the rest of the sentence "NAME ..."
    std::string remedy;
    std::string words = {}; ///< the plugin's own
};

/// A text of a plugin that is put in quotes only where it is shown.
struct Quoted {
    std::string_view text;
};

/// Throws Breach if a rule is broken.
template <class... Parts>
void refuse_if(bool broken, std::string_view remedy, fmt::format_string<const Parts&...> what,
               const Parts&... parts) {
    if (broken)
        throw Breach{fmt::format(what, parts...), std::string(remedy)};
}

/// Looks at a plugin's file; what it breaks is thrown as Faulty (Origin::table) of the file.
template <class Look>
auto look_at(const std::string& file, const Look& look) {
    try {
        return look();
    } catch (const Breach& breach) {
        throw Faulty(Origin::table, fault_in_file(file, breach.what, breach.remedy));
    }
}

} // namespace ringfill

template <>
struct fmt::formatter<ringfill::Quoted> : formatter<std::string> {
    auto format(const ringfill::Quoted& quoted, format_context& context) const {
        return formatter<std::string>::format(ringfill::in_quotes(quoted.text), context);
    }
};
