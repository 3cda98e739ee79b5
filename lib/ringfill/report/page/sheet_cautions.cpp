#include <ringfill/report/page/sheet_parts.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/say/cautions.hpp>

namespace ringfill {
namespace {

bool is_about_a_bore(const Plan& plan, const Caution& caution) {
    return std::any_of(plan.bores.begin(), plan.bores.end(),
                       [&](const BorePlan& bore) { return is_about_bore(caution, bore.name); });
}

Markup caution_item(const Caution& caution, std::size_t index, bool names_what) {
    const Part in = Part{"", UnitSystem::metric}.in("cautions", index);
    Markup item = tick_box("box to tick");
    if (names_what && !caution.about.empty())
        item += element("b", in.text("about", names_of(caution.about)) + ": ");
    item += in.text("text", caution.text);
    return element("li", item + " (" + in.text("because", caution.because) +
                             fmt::format(") {}", source_keys(caution)));
}

constexpr std::pair<When, std::string_view> headings[] = {
    {When::before, "Before"}, {When::during, "During"}, {When::after, "After"}};

/// The cautions that apply and that `wanted` picks, under a heading for each time.
template <class Wanted>
Markup by_time(const Plan& plan, std::string_view rank, bool names_what, Wanted wanted) {
    Markup all;
    for (const auto& [time, title] : headings) {
        const When when = time;
        const Markup list = each(plan.cautions.size(), [&](std::size_t i) {
            const Caution& caution = plan.cautions[i];
            return caution.applies == Applies::yes && caution.when == when && wanted(caution)
                       ? caution_item(caution, i, names_what)
                       : Markup();
        });
        if (!list.empty())
            all += element(rank, title) + element("ul", list, {{"class", "cautions"}});
    }
    return all;
}

/// What may apply because the job does not say: a line for each field, with what to look for.
Markup open_questions(const Plan& plan) {
    Markup list;
    for (const OpenField& open : open_fields(plan.cautions)) {
        Markup line;
        const auto part_of = [&](const Caution* caution) {
            return result_of(plan).in("cautions", static_cast<std::size_t>(caution - plan.cautions.data()));
        };
        for (const Caution* caution : open.cautions) {
            line += (line.empty() ? "" : ", ");
            if (!caution->about.empty())
                line += part_of(caution).text("about", names_of(caution->about)) + ": ";
            line += part_of(caution).text("check", caution->check);
        }
        list += element("li", line + " (" + part_of(open.cautions.front()).text("field", open.field) + ")");
    }
    return list.empty()
               ? list
               : element("h3", "Not stated in the job, check") + element("ul", list, {{"class", "compact"}});
}

} // namespace

Markup bore_cautions(const SheetBore& bore) {
    const Markup list = by_time(bore.plan, "h4", false, [&](const Caution& caution) {
        return is_about_bore(caution, bore.planned.name);
    });
    return list.empty() ? list : element("h3", "Cautions for this bore") + list;
}

Markup job_cautions(const Plan& plan) {
    return heading("cautions", "Cautions for the whole job") +
           by_time(plan, "h3", true,
                   [&](const Caution& caution) { return !is_about_a_bore(plan, caution); }) +
           open_questions(plan);
}

} // namespace ringfill
