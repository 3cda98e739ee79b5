#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/material/abi.h>
#include <ringfill/material/filler.hpp>
#include <ringfill/material/plugin_file.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What a family is asked. The names of topics and numbers are listed in abi.h.
struct Question {
    std::string topic;
    std::string grade;
    std::string filler;                                  ///< family/name
    std::vector<std::pair<std::string, double>> numbers; ///< what is not known is absent
};

/// A figure a family answers with, and how it was reached.
struct AnsweredFigure {
    std::string name;
    double number = 0; ///< of a method: its minimum [K]; of a value: in the unit its name ends in
    std::string formula;
    std::vector<Input> inputs;
    std::string source;
    std::string note; ///< the end of a sentence; may be empty
};

/// One method's answer to how hot the metal must be.
struct AnsweredMethod : AnsweredFigure {
    std::uint32_t flags = 0; ///< RF_OUT_OF_COMPOSITION and so on, as abi.h says

    bool is(std::uint32_t any_of) const { return (flags & any_of) != 0; }
    bool has_number() const { return !is(RF_NONE_NEEDED | RF_NO_FIGURE | RF_NOT_USABLE); }
};

/// What a family says to one question, checked and copied.
struct FamilyAnswer {
    bool supported = false; ///< the family has a rule for it; otherwise its table says it all
    std::vector<AnsweredFigure> values;
    std::vector<AnsweredMethod> methods;
    std::vector<Advice> advice;
};

/// Asks a plugin and checks what it says: finite numbers in range, known names, sources of the bibliography,
/// clean text. A plugin without a rule, or without one for this question, gives an answer that is not
/// supported. Throws Faulty (Origin::table), one fault that names file, topic, grade and what is wrong.
FamilyAnswer ask(const Plugin& plugin, const Question& question, const Bibliography& sources);

} // namespace ringfill
