#include <ringfill/job/field_rules.hpp>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/job/spans.hpp>

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

const std::vector<TextForm>& text_forms() {
    static const std::vector<TextForm> forms = {
        {&job_record, "start", "^(?:[01]?[0-9]|2[0-3]):[0-5][0-9]$"},
        {&job_record, "procedures", fmt::format("^[\\s\\S]{{{},{}}}$", spans::name.low, spans::name.high)},
        {&prices_record, "currency", "^[A-Z]{3}$"},
        {&prices_record, "wire_kg", "\\S"},
        {&prices_record, "packs", "\\S"},
        {&prices_record, "extras", "\\S"},
        {&bore_record, "composition", fmt::format("^(?:{})$", listed(element_symbols(), "|"))},
    };
    return forms;
}

} // namespace ringfill
