#include <ringfill/report/page/sheet_parts.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/none_of.hpp>

#include <ringfill/say/cautions.hpp>

namespace ringfill {
namespace {

Markup caution_item(const Caution& caution, std::size_t index, bool names_what) {
    const Part in = Part{"", UnitSystem::metric}.in("cautions", index);
    Markup item = tick_box("box to tick");
    if (names_what && !caution.about.empty())
        item += element("b", in.text("about", names_of(caution.about)) + ": ");
    item += in.text("text", caution.text);
    return element("li", item + " (" + in.text("because", caution.because) +
                             fmt::format(") {}", source_keys(caution)));
}

constexpr std::string_view headings[] = {"Before", "During", "After"}; // as When

/// The cautions that apply, to a bore or to none, under a heading for each time.
Markup by_time(const Plan& plan, const BorePlan* bore) {
    const auto is_wanted = [&](const Caution& caution) {
        const auto is_about = [&](const BorePlan& one) {
            return caution.about == std::vector<Subject>{{Concern::bore, one.name}};
        };
        return caution.applies == Applies::yes &&
               (bore ? is_about(*bore) : ranges::none_of(plan.bores, is_about));
    };
    Markup all;
    for (const When when : {When::before, When::during, When::after}) {
        Markup list;
        for (std::size_t i = 0; i < plan.cautions.size(); ++i)
            if (plan.cautions[i].when == when && is_wanted(plan.cautions[i]))
                list += caution_item(plan.cautions[i], i, !bore);
        if (!list.empty())
            all += element(bore ? "h4" : "h3", headings[static_cast<std::size_t>(when)]) +
                   element("ul", list, {{"class", "cautions"}});
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
    const Markup list = by_time(bore.plan, &bore.planned);
    return list.empty() ? list : element("h3", "Cautions for this bore") + list;
}

Markup job_cautions(const Plan& plan) {
    return heading("cautions", "Cautions for the whole job") + by_time(plan, nullptr) + open_questions(plan);
}

} // namespace ringfill
