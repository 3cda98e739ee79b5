#include <ringfill/job/field_guide.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/job/description.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

std::string shape_in_words(const Field& field) {
    if (field.shape == Shape::list)
        return fmt::format("a list of {} to {}; each ", field.least, field.most);
    return field.shape == Shape::named ? "names of your choosing; each " : "";
}

void write(std::string& text, const Record& record, const std::string& path) {
    for (const Field& field : record.fields) {
        const std::string own = fmt::format("{}{}{}", path, path.empty() ? "" : ".", field.name);
        text += fmt::format("{}\n    {}.\n    {}.\n", own, field.help, field_facts(field));
        if (field.record)
            write(text, *field.record,
                  own + (field.shape == Shape::list    ? "[]"
                         : field.shape == Shape::named ? ".NAME"
                                                       : ""));
    }
}

} // namespace

std::string field_facts(const Field& field) {
    std::string text = shape_in_words(field) + std::string(kind_in_words(field.kind));
    if (!field.words.empty())
        text += fmt::format("{}{}", field.kind == Kind::word ? ": " : ", or ", fmt::join(field.words, ", "));
    if (const std::string range = range_in_words(field); !range.empty())
        text += "; " + range;
    if (field.required)
        text += "; required";
    if (!field.fallback.empty())
        text += fmt::format("; {} when left out [{}]", field.fallback, field.fallback_source);
    return text;
}

std::string field_guide() {
    std::string text =
        "Fields of a ringfill-job/1 file (JSON; comments and trailing commas are allowed).\n"
        "A quantity is a text with its unit; a bare number is a length in the job's units.\n\n";
    write(text, job_record, "");
    return text;
}

} // namespace ringfill
