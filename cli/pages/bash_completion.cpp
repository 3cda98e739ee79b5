#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>

#include "../command_rows.hpp"
#include "pages.hpp"

namespace ringfill::cli {
namespace {

/// "-o,--output" parted by another sign.
std::string names_of(const OptionRow& row, char between) {
    std::string names(row.names);
    std::replace(names.begin(), names.end(), ',', between);
    return names;
}

/// What is offered after an option that takes a value.
std::string values() {
    std::string text;
    for (const OptionRow& row : option_rows()) {
        if (row.value.empty())
            continue;
        std::string words(row.value);
        std::replace(words.begin(), words.end(), '|', ' ');
        text += fmt::format("    {}) ", names_of(row, '|'));
        text += row.value == "DIR"    ? "_ringfill_files -d"
                : row.value == "FILE" ? "_ringfill_files -f"
                                      : fmt::format("_ringfill_words \"{}\"", words);
        text += "; return ;;\n";
    }
    return text;
}

std::string options_of(const CommandRow& row) {
    std::string options;
    for (const std::string_view names : row.options)
        for (const OptionRow& option : option_rows())
            if (option.names == names)
                options += names_of(option, ' ') + " ";
    return options + "-h --help";
}

/// The options of each command, and whether a file stands after it.
std::string command_words() {
    std::string text;
    for (const CommandRow& row : command_rows()) {
        text += fmt::format("    {}) options=\"{}\" files={} ;;\n", row.name, options_of(row),
                            row.word == "NAME" ? "" : "yes");
    }
    return text;
}

} // namespace

std::string bash_completion() {
    // A word that is no command is a job for the first one, as the program takes it.
    std::vector<std::string_view> names;
    for (const CommandRow& row : command_rows())
        names.push_back(row.name);
    return fmt::format(R"(# bash completion for ringfill, made from the rows that its help is made from

_ringfill_words() {{
  mapfile -t COMPREPLY < <(compgen -W "$1" -- "$word")
}}

_ringfill_files() {{
  compopt -o filenames 2>/dev/null
  mapfile -t COMPREPLY < <(compgen "$1" -- "$word")
}}

_ringfill() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD-1]}} options= files=yes
  COMPREPLY=()
  if [ "$COMP_CWORD" -eq 1 ]; then
    _ringfill_words "{0} --help --version"
    [[ -z $word || $word == -* ]] && return
    local found=("${{COMPREPLY[@]}}")
    _ringfill_files -f
    COMPREPLY=("${{found[@]}}" "${{COMPREPLY[@]}}")
    return
  fi
  case $before in
{1}  esac
  case ${{COMP_WORDS[1]}} in
{2}    -*) return ;;
    *) options="{3}" ;;
  esac
  case $word in
    -*) _ringfill_words "$options" ;;
    *) [ -z "$files" ] || _ringfill_files -f ;;
  esac
}}

complete -F _ringfill ringfill
)",
                       listed(names, " "), values(), command_words(), options_of(command_rows().front()));
}

} // namespace ringfill::cli
