#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/shop.hpp>
#include <ringfill/report/text/materials_text.hpp>

#include "../table_folder.hpp"
#include "../terminal.hpp"
#include "check_plugin.hpp"
#include "commands.hpp"

namespace ringfill::cli {
namespace {

[[noreturn]] void refuse(const std::string& name, std::string_view what,
                         const std::vector<std::string>& known) {
    Fault fault = fault_in_file("ringfill", fmt::format("is not a known {}", what), suggest(name, known));
    fault.value = in_quotes(name);
    throw Faulty(Origin::command_line, std::move(fault));
}

const Family& named_family(const Registry& registry, const std::string& name) {
    const Registry::Families families = registry.families();
    for (const Family& family : families)
        if (family.name == name)
            return family;
    for (const MissingFamily& missing : registry.missing())
        if (missing.name == name)
            throw Faulty(Origin::table, missing.why);
    refuse(name, "family", families | ranges::views::transform([](const Family& family) {
                               return family.name;
                           }) | ranges::to<std::vector>());
}

std::string entry_text(const Family& family, const std::string& name) {
    std::vector<std::string> known;
    for (const Base& base : family.bases) {
        if (base.name == name)
            return base_text(family, base);
        known.push_back(base.name);
    }
    for (const Filler& filler : family.fillers) {
        if (filler.name == name)
            return filler_text(family, filler);
        known.push_back(filler.name);
    }
    refuse(name, "base metal or filler of " + family.name, known);
}

} // namespace

void materials_command(const Request& request) {
    if (!request.check.empty())
        return check_plugin(request);
    const Shop shop = read_shop(shelf_for(request.tables), plugin_folders(request.plugins));
    const std::size_t slash = request.file.find('/');
    std::string text;
    if (request.file.empty())
        text = families_text(shop.registry);
    else if (const Family& family = named_family(shop.registry, request.file.substr(0, slash));
             slash == std::string::npos)
        text = family_text(family);
    else
        text = entry_text(family, request.file.substr(slash + 1));
    deliver(text, request.output);
}

} // namespace ringfill::cli
