#include <ringfill/job/element_symbols.hpp>

namespace ringfill {

const std::vector<std::string>& element_symbols() {
    static const std::vector<std::string> symbols = {
        "C",  "Si", "Mn", "P",  "S",  "Cr", "Ni", "Mo", "V",  "Cu", "Al", "Nb", "Ti",
        "B",  "N",  "W",  "Co", "Sn", "As", "Sb", "Pb", "Bi", "Zr", "Ta", "Ca", "Mg",
        "Ce", "Zn", "Se", "Te", "Fe", "H",  "O",  "La", "Y",  "Ag", "Be", "Cd", "Hf"};
    return symbols;
}

} // namespace ringfill
