#include <ringfill/job/field_rules.hpp>

namespace ringfill {

const std::vector<std::string>& element_symbols() {
    static const std::vector<std::string> symbols = {
        "C",  "Si", "Mn", "P",  "S",  "Cr", "Ni", "Mo", "V",  "Cu", "Al", "Nb", "Ti",
        "B",  "N",  "W",  "Co", "Sn", "As", "Sb", "Pb", "Bi", "Zr", "Ta", "Ca", "Mg",
        "Ce", "Zn", "Se", "Te", "Fe", "H",  "O",  "La", "Y",  "Ag", "Be", "Cd", "Hf"};
    return symbols;
}

const std::vector<Choice>& field_choices() {
    using enum Choice::How;
    static const std::vector<Choice> choices = {
        {&worn_record, exactly_one, {"diameter", "stations"}},
        {&station_record, exactly_one, {"radii", "diameters"}},
        {&procedure_record, at_least_one, {"wire_feed", "current", "deposition_rate"}},
        {&bore_record, at_most_one, {"size_class", "size_limits"}},
    };
    return choices;
}

} // namespace ringfill
