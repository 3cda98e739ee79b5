#include <ringfill/table/replaced.hpp>

#include <filesystem>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/document/write.hpp>

namespace ringfill {
namespace {

/// What every table has and no row stands under.
constexpr std::string_view no_rows[] = {"format", "description", "sources", "family", "has_rules", "usual"};

bool are_alike(const Value& one, const Value& other) {
    return write_json_line(one) == write_json_line(other);
}

/// The members of two objects that differ or that only one has, those of the first one first.
std::vector<std::string> differing(const Value& ours, const Value& theirs) {
    std::vector<std::string> names;
    for (const Member& member : *ours.object())
        if (const Value* other = theirs.find(member.name); !other || !are_alike(member.value, *other))
            names.push_back(member.name);
    for (const Member& member : *theirs.object())
        if (!ours.find(member.name))
            names.push_back(member.name);
    return names;
}

/// A row of a part of a table, as the last of the files before `end` has it.
const Value* row_before(const std::vector<Document>& files, std::size_t end, std::string_view part,
                        std::string_view row) {
    for (std::size_t i = end; i-- > 0;)
        if (const Value* rows = files[i].root.find(part))
            if (const Value* found = rows->find(row))
                return found;
    return nullptr;
}

/// The least maximum between rings of the kind that a grade is of, whatever document the job works by.
const Value* maximum_of_kind(const Value& row, const std::vector<Document>& files, std::size_t end) {
    const Value* own = row.find("heat_group");
    const Value* kind = own ? own : row.find("group");
    const Value* group =
        kind && kind->text() ? row_before(files, end, "heat_groups", *kind->text()) : nullptr;
    const Value* rows = group ? group->find("interpass_max_degC") : nullptr;
    const Value* least = nullptr;
    if (!rows || !rows->list())
        return nullptr;
    for (const Value& one : *rows->list())
        if (const Value* value = one.find("value"); value && value->number() && !one.find("document") &&
                                                    (!least || *value->number() < *least->number()))
            least = value;
    return least;
}

/// A row with what it goes by and leaves to others: the practice of the grade that it is treated by, and the
/// maximum of its kind.
Value as_it_counts(const Value& row, const std::vector<Document>& files, std::size_t end,
                   std::string_view part) {
    if (part != "bases" || !row.object())
        return row;
    Value::Object whole = *row.object();
    if (const Value* other = row.find("practice_of"); other && other->text() && !row.find("practice"))
        if (const Value* treated_by = row_before(files, end, part, *other->text()))
            if (const Value* practice = treated_by->find("practice"))
                whole.push_back({"practice", *practice});
    if (!row.find("interpass_max_degC"))
        if (const Value* maximum = maximum_of_kind(row, files, end))
            whole.push_back({"interpass_max_degC", *maximum});
    return whole;
}

} // namespace

std::vector<ReplacedRow> replaced_rows(const std::vector<Document>& files, const std::string& family) {
    std::vector<ReplacedRow> replaced;
    for (std::size_t i = 1; i < files.size(); ++i) {
        const std::string name =
            family.empty() ? std::filesystem::path(files[i].file).stem().string() : "families/" + family;
        const auto add = [&](const std::string& table, std::string_view part, const Member& theirs,
                             const Value& ours) {
            if (are_alike(ours, theirs.value))
                return;
            const bool whole = ours.object() && theirs.value.object();
            replaced.push_back({files[i].file, family, table, theirs.name,
                                whole ? differing(ours, theirs.value) : std::vector{theirs.name},
                                lowered_figures(theirs.name, as_it_counts(ours, files, i, part),
                                                as_it_counts(theirs.value, files, i + 1, part))});
        };
        if (!files[i].root.object())
            continue;
        for (const Member& part : *files[i].root.object()) {
            if (ranges::contains(no_rows, part.name))
                continue;
            if (!part.value.object()) { // a figure of the table itself
                for (std::size_t j = i; j-- > 0;)
                    if (const Value* ours = files[j].root.find(part.name)) {
                        add(name, {}, part, *ours);
                        break;
                    }
                continue;
            }
            for (const Member& row : *part.value.object())
                if (const Value* ours = row_before(files, i, part.name, row.name))
                    add(part.name == name ? name : name + '.' + part.name, part.name, row, *ours);
        }
    }
    return replaced;
}

} // namespace ringfill
