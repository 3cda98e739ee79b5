#include <ringfill/document/field.hpp>

namespace ringfill {

const Field* Record::find(std::string_view field) const {
    for (const Field& known : fields)
        if (known.name == field)
            return &known;
    return nullptr;
}

std::string_view kind_in_words(Kind kind) {
    static constexpr std::string_view words[] = {
        "a text",
        "one of the words",
        "true or false",
        "a whole number",
        "a plain number",
        R"(a percentage such as "10 %")",
        R"(a length such as "90.4 mm" or "3-9/16 in")",
        R"(a volume such as "300 m3")",
        R"(a mass such as "15 kg" or "33 lb")",
        R"(a speed such as "350 mm/min" or "14 in/min")",
        R"(a flow such as "15 L/min" or "32 ft3/h")",
        R"(a rate such as "1.2 kg/h" or "2.6 lb/h")",
        R"(a current such as "180 A")",
        R"(a voltage such as "19.5 V")",
        R"(a power such as "30 kW")",
        R"(a heat flow per degree such as "2 W/K")",
        R"(a heat input such as "0.9 kJ/mm")",
        R"(a temperature such as "180 degC" or "350 degF")",
        R"(an angle such as "90 deg")",
        R"(a turning speed such as "125 rev/min")",
        R"(a time such as "20 min")",
        R"(a number with its source such as [7850, "EN1993-1-2"])",
        R"(two numbers with their source such as [2, 12, "practice"])",
        "an object in braces",
    };
    return words[static_cast<std::size_t>(kind)];
}

} // namespace ringfill
