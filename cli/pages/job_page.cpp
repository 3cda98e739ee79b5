#include <set>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/job/format.hpp>
#include <ringfill/units/unit.hpp>
#include <ringfill/version.hpp>

#include "mdoc.hpp"
#include "pages.hpp"

namespace ringfill::cli {
namespace {

std::string rules_of(const Record& record) {
    std::string text;
    for (const Choice& choice : field_choices)
        if (choice.record == &record)
            text += fmt::format("{} of {} is given. ",
                                choice.how == Choice::How::exactly_one    ? "Exactly one"
                                : choice.how == Choice::How::at_least_one ? "At least one"
                                                                          : "At most one",
                                listed(choice.fields, ", "));
    return text;
}

/// The fields of a record and of those in it, each with what it means and takes and a value of it.
void write_fields(std::string& text, const Record& record, const std::string& path) {
    for (const Field& field : record.fields) {
        const std::string own = fmt::format("{}{}{}", path, path.empty() ? "" : ".", field.name);
        text += fmt::format(".It Va {}\n", own);
        text += mdoc_prose(fmt::format("{}. {}. {}", field.help, field_facts(field),
                                       field.record ? rules_of(*field.record) : std::string()));
        if (field.sample.find("...") == std::string_view::npos)
            text += fmt::format(".Dl {}", mdoc_literal(fmt::format("\"{}\": {}", field.name, field.sample)));
        if (field.record)
            write_fields(text, *field.record,
                         own + (field.shape == Shape::list    ? "[]"
                                : field.shape == Shape::named ? ".NAME"
                                                              : ""));
    }
}

void collect_kinds(std::set<Kind>& kinds, const Record& record) {
    for (const Field& field : record.fields) {
        if (!symbols_of(field.kind).empty())
            kinds.insert(field.kind);
        if (field.record)
            collect_kinds(kinds, *field.record);
    }
}

/// The units of each kind of quantity that a job has.
std::string units() {
    std::set<Kind> kinds;
    collect_kinds(kinds, job_record);
    std::string text = ".Bl -tag -width Ds\n";
    for (const Kind kind : kinds)
        text += fmt::format(".It {}\n{}", mdoc_text(kind_in_words(kind)),
                            mdoc_prose(listed(symbols_of(kind), ", ")));
    return text + ".El\n";
}

} // namespace

std::string job_page(const std::string& date, const std::string& sample) {
    std::string text = fmt::format(".Dd {}\n.Dt RINGFILL-JOB 5\n.Os ringfill {}\n.Sh NAME\n.Nm ringfill-job\n"
                                   ".Nd job file of ringfill\n.Sh DESCRIPTION\n",
                                   date, version);
    text += mdoc_prose(
        "A job is a JSON file in UTF-8; comments (// and /* */) and a comma after the last member are "
        "allowed. A field that is not known is an error, and so is a name that stands twice. All "
        "faults of a file are told at once, with line and remedy.");
    text += ".Sh QUANTITIES\n";
    text += mdoc_prose(
        "A quantity is a text with its unit; a bare number is a length in the units of the job. "
        "Numbers may be decimals with a point, fractions and mixed fractions (9/16, 3-9/16, 3 9/16), "
        "and a quantity may go on with a smaller unit (1 ft 6 in, 1 h 30 min). Dashes and blanks as "
        "word processors make them are read too. The units:");
    text += units() + ".Sh FIELDS OF A JOB\n";
    text += mdoc_prose(
        "[] stands for each element of a list, NAME for a name of your choosing. What is left out is "
        "assumed as told, and the plan lists it with the key of its source.");
    text += ".Bl -tag -width Ds\n";
    write_fields(text, job_record, "");
    text += ".El\n.Sh EXAMPLES\nA whole job:\n.Bd -literal\n" + mdoc_literal(sample) + ".Ed\n";
    return text + ".Sh SEE ALSO\n.Xr ringfill 1\n";
}

} // namespace ringfill::cli
