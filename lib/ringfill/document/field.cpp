#include <ringfill/document/field.hpp>

#include <algorithm>

namespace ringfill {

bool Field::has_word(std::string_view word) const {
    return std::find(words.begin(), words.end(), word) != words.end();
}

const Field* Record::find(std::string_view field) const {
    for (const Field& known : fields)
        if (known.name == field)
            return &known;
    return nullptr;
}

std::string_view kind_in_words(Kind kind) {
    switch (kind) {
    case Kind::text:
        return "a text";
    case Kind::word:
        return "one of the words";
    case Kind::flag:
        return "true or false";
    case Kind::count:
        return "a whole number";
    case Kind::number:
        return "a plain number";
    case Kind::share:
        return R"(a percentage such as "10 %")";
    case Kind::length:
        return R"(a length such as "90.4 mm" or "3-9/16 in")";
    case Kind::volume:
        return R"(a volume such as "300 m3")";
    case Kind::mass:
        return R"(a mass such as "15 kg" or "33 lb")";
    case Kind::speed:
        return R"(a speed such as "350 mm/min" or "14 in/min")";
    case Kind::volume_flow:
        return R"(a flow such as "15 L/min" or "32 ft3/h")";
    case Kind::mass_flow:
        return R"(a rate such as "1.2 kg/h" or "2.6 lb/h")";
    case Kind::current:
        return R"(a current such as "180 A")";
    case Kind::voltage:
        return R"(a voltage such as "19.5 V")";
    case Kind::power:
        return R"(a power such as "30 kW")";
    case Kind::conductance:
        return R"(a heat flow per degree such as "2 W/K")";
    case Kind::energy_per_length:
        return R"(a heat input such as "0.9 kJ/mm")";
    case Kind::temperature:
        return R"(a temperature such as "180 degC" or "350 degF")";
    case Kind::angle:
        return R"(an angle such as "90 deg")";
    case Kind::turning:
        return R"(a turning speed such as "125 rev/min")";
    case Kind::time:
        return R"(a time such as "20 min")";
    case Kind::sourced:
        return R"(a number with its source such as [7850, "EN1993-1-2"])";
    case Kind::sourced_range:
        return R"(two numbers with their source such as [2, 12, "practice"])";
    case Kind::object:
        return "an object in braces";
    }
    return "a value";
}

} // namespace ringfill
