#include <ringfill/job/format.hpp>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
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
        const std::string own = member_path(path, field.name);
        text += fmt::format("{}\n    {}.\n    {}.\n", own, field.help, field_facts(field));
        const bool is_list = field.shape == Shape::list;
        if (field.record)
            write(text, *field.record, own + (is_list ? "[]" : field.shape == Shape::named ? ".NAME" : ""));
    }
}

std::string explanation(const Field& field) {
    std::string text(field.help);
    if (!field.fallback.empty())
        text += fmt::format("; {} when left out", field.fallback);
    if (field.kind == Kind::word)
        text += fmt::format("; {}{}", field.words.size() > 1 ? "one of " : "", listed(field.words, ", "));
    return text;
}

/// Writes lines at a depth of braces, as they stand or as comments.
struct Page {
    std::string text;
    std::size_t depth = 1;
    bool commented = false;

    void line(std::string_view words) {
        text += fmt::format("{:{}}{}{}\n", "", 2 * depth, commented ? "// " : "", words);
    }

    void object(const Field& field) {
        const bool named = field.shape == Shape::named;
        const bool list = field.shape == Shape::list;
        text += fmt::format("{:{}}// {}\n", "", 2 * depth, explanation(field));
        line(fmt::format("\"{}\": {}", field.name, named ? "{ \"main\": {" : list ? "[ {" : "{"));
        ++depth;
        for (const Field& one : field.record->fields)
            write(one, one.sample);
        --depth;
        line(named ? "} }," : list ? "} ]," : "},");
    }

    void write(const Field& field, std::string_view sample) {
        const bool was_commented = commented;
        commented = was_commented || !(field.required || field.starts);
        if (field.kind == Kind::object)
            object(field);
        else
            line(fmt::format("{:<40} // {}", fmt::format("\"{}\": {},", field.name, sample),
                             explanation(field)));
        commented = was_commented;
    }
};

} // namespace

std::string field_facts(const Field& field) {
    std::string text = shape_in_words(field) + std::string(kind_in_words(field.kind));
    if (!field.words.empty())
        text += fmt::format("{}{}", field.kind == Kind::word ? ": " : ", or ", listed(field.words, ", "));
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

std::string starter_job(UnitSystem units) {
    Page page;
    page.text = "// A job for ringfill. Change what differs from your bores; a line that begins with // is "
                "only shown:\n"
                "// take the // away to use it\n"
                "// (of a block in braces from all its lines). Lengths: \"90.4 mm\", \"3-9/16 in\"; "
                "temperatures: \"4 degC\", \"40 degF\".\n"
                "{\n";
    for (const Field& field : job_record.fields)
        page.write(field, field.name == "units" && units == UnitSystem::inch ? "\"inch\"" : field.sample);
    return page.text + "}\n";
}

} // namespace ringfill
