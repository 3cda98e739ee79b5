#include <ringfill/job/starter.hpp>

#include <fmt/format.h>

#include <ringfill/job/description.hpp>

namespace ringfill {
namespace {

/// Writes lines at a depth of braces, as they stand or as comments.
struct Page {
    std::string text;
    std::size_t depth = 1;
    bool commented = false;

    void line(std::string_view words) {
        text += fmt::format("{:{}}{}{}\n", "", 2 * depth, commented ? "// " : "", words);
    }
};

void write_fields(Page& page, const Record& record);

void write_object(Page& page, const Field& field) {
    const bool named = field.shape == Shape::named;
    const bool list = field.shape == Shape::list;
    page.line(fmt::format("\"{}\": {}", field.name, named ? "{ \"main\": {" : list ? "[ {" : "{"));
    ++page.depth;
    write_fields(page, *field.record);
    --page.depth;
    page.line(named ? "} }," : list ? "} ]," : "},");
}

std::string explanation(const Field& field) {
    std::string text(field.help);
    if (!field.fallback.empty())
        text += fmt::format("; {} when left out", field.fallback);
    if (!field.words.empty() && field.kind == Kind::word) {
        text += field.words.size() > 1 ? "; one of" : ";";
        for (std::size_t i = 0; i < field.words.size(); ++i)
            text += fmt::format("{} {}", i ? "," : "", field.words[i]);
    }
    return text;
}

void write_field(Page& page, const Field& field, std::string_view sample) {
    const bool shown = field.required || field.starts;
    const bool was_commented = page.commented;
    page.commented = was_commented || !shown;
    if (field.kind == Kind::object) {
        page.line(fmt::format("{}{}", page.commented ? "" : "// ", explanation(field)));
        write_object(page, field);
    } else {
        page.line(
            fmt::format("{:<40} // {}", fmt::format("\"{}\": {},", field.name, sample), explanation(field)));
    }
    page.commented = was_commented;
}

void write_fields(Page& page, const Record& record) {
    for (const Field& field : record.fields)
        write_field(page, field, field.sample);
}

} // namespace

std::string starter_job(UnitSystem units) {
    Page page;
    page.text = "// A job for ringfill. Change what differs from your bores; a line that begins with // is "
                "only shown:\n"
                "// take the // away to use it\n"
                "// (of a block in braces from all its lines). Lengths: \"90.4 mm\", \"3-9/16 in\"; "
                "temperatures: \"4 "
                "degC\", \"40 degF\".\n"
                "{\n";
    for (const Field& field : job_record.fields)
        write_field(page, field,
                    field.name == "units" && units == UnitSystem::inch ? "\"inch\"" : field.sample);
    return page.text + "}\n";
}

} // namespace ringfill
