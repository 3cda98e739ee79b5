#include <set>
#include <stdexcept>

#include <fmt/format.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/registry.hpp>

namespace ringfill {
namespace {

std::string family_part(const std::string& name) {
    return name.substr(0, name.find('/'));
}

constexpr std::size_t most_told = 12;

/// The one of another family that is called so, or the nearest; of few names all, of many where they are.
std::string which_meant(const std::string& name, const std::vector<std::string>& known) {
    const std::string called = '/' + name.substr(name.find('/') + 1);
    for (const std::string& other : known)
        if (called != "/" && other.ends_with(called))
            return suggest(other, known);
    std::vector<std::string> begun; // a grade without its family and its last letters
    for (const std::string& other : known)
        if (called.size() > 2 && other.find(called) != std::string::npos)
            begun.push_back(in_quotes(other));
    if (!begun.empty() && begun.size() <= most_told && !nearest(name, known))
        return fmt::format("did you mean {}?", few_of(begun, most_told, "or"));
    return nearest(name, known) || known.size() <= most_told
               ? suggest(name, known)
               : fmt::format("ringfill materials lists all {}", known.size());
}

void refuse_missing(const std::vector<MissingFamily>& missing, const std::string& family) {
    for (const MissingFamily& one : missing)
        if (one.name == family)
            throw Faulty(Origin::table, one.why);
}

/// A family that nobody knows may be that of a plugin which did not load.
void refuse_unloaded(const std::vector<MissingFamily>& missing) {
    for (const MissingFamily& one : missing)
        if (one.may_be_any)
            throw Faulty(Origin::table, one.why);
}

template <class Row>
const Row* row_of(const Registry& registry, std::vector<Row> Family::*rows, const std::string& name) {
    if (const Family* family = registry.family(family_part(name)))
        for (const Row& row : family->*rows)
            if (name == fmt::format("{}/{}", family->name, row.name))
                return &row;
    return nullptr;
}

Registry::Families families_of(const std::set<std::string>& names, const Registry& registry) {
    Registry::Families families;
    for (const std::string& name : names)
        if (const Family* family = registry.family(name))
            families.push_back(*family);
    return families;
}

template <class Row>
const Row* find_row(const Registry& registry, std::vector<Row> Family::*rows, const std::string& name,
                    std::string_view what, const std::string& path, std::vector<Fault>& faults) {
    if (const Row* row = row_of(registry, rows, name))
        return row;
    refuse_missing(registry.missing(family_part(name)), family_part(name));
    refuse_missing(registry.missing(), family_part(name));
    std::vector<std::string> known;
    for (const Family& family : registry.families())
        for (const Row& row : family.*rows)
            known.push_back(fmt::format("{}/{}", family.name, row.name));
    if (!registry.family(family_part(name)) && name.find('/') != std::string::npos && !nearest(name, known))
        refuse_unloaded(registry.missing());
    faults.push_back(fault_at_path(path, in_quotes(name), fmt::format("is not a known {}", what),
                                   which_meant(name, known)));
    return nullptr;
}

} // namespace

const Filler* find_filler(const Registry& registry, const std::string& name, const std::string& path,
                          std::vector<Fault>& faults) {
    return find_row(registry, &Family::fillers, name, "filler", path, faults);
}

const Base* find_base(const Registry& registry, const std::string& name, const std::string& path,
                      std::vector<Fault>& faults) {
    return find_row(registry, &Family::bases, name, "base metal", path, faults);
}

const Family& family_of(const Registry& registry, const std::string& name) {
    if (const Family* family = registry.family(family_part(name)))
        return *family;
    throw std::logic_error("the family of a base metal that was not found");
}

std::vector<std::reference_wrapper<const Family>> families_of(const Job& job, const Registry& registry) {
    std::set<std::string> names;
    for (const WornBore& bore : job.bores)
        names.insert(family_part(bore.base));
    for (const Procedure& procedure : job.procedures)
        names.insert(family_part(procedure.filler));
    return families_of(names, registry);
}

std::optional<Suit> suit_of(const Registry& registry, const std::vector<Suit>& common, const SuitName& filler,
                            const SuitName& base) {
    SuitRules rules(common.begin(), common.end());
    for (const Family& family :
         registry.has_own() ? registry.families()
                            : families_of({family_part(filler.name), family_part(base.name)}, registry))
        rules.insert(rules.end(), family.suits.begin(), family.suits.end());
    const Suit* rule = find_suit(rules, filler, base);
    return rule ? std::optional(*rule) : std::nullopt;
}

std::vector<std::string> buffer_fillers(const Suit& rule, const Registry& registry) {
    std::vector<std::string> names;
    for (const std::string& wanted : rule.buffer) {
        const std::size_t before = names.size();
        if (!row_of(registry, &Family::fillers, wanted))
            for (const Family& family : registry.families())
                for (const Filler& filler : family.fillers)
                    if (filler.group == wanted)
                        names.push_back(fmt::format("{}/{}", family.name, filler.name));
        if (names.size() == before)
            names.push_back(wanted);
    }
    return names;
}

} // namespace ringfill
