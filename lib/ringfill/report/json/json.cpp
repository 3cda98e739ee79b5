#include <ringfill/report/json/json.hpp>

#include <ringfill/day/calendar.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/report/json/blocks.hpp>
#include <ringfill/report/json/members.hpp>

namespace ringfill {
namespace {

Value::Object totals_object(const Plan& plan) {
    const Totals& totals = plan.totals;
    return object(member("laid_kg", totals.laid), member("wire_kg", when(totals.wire > Mass(), totals.wire)),
                  member("pieces", when(totals.pieces > 0, totals.pieces)),
                  member("pieces_kg", when(totals.pieces > 0, totals.piece_mass)),
                  member("arc_s", totals.arc), member("gas_l", totals.gas),
                  member("elapsed_s", given(plan.day, [](const DayPlan& day) { return day.day.ends; })));
}

Value::Object day_object(const DayPlan& day) {
    const auto clock = [&](Time time) { return day_and_clock(day.calendar, time); };
    const auto entry = [&](const DayEntry& one) {
        return object(member("at", clock(one.from)), member("from_s", one.from), member("to_s", one.to),
                      member("bore", unless_empty(one.bore)), member("step", words_of(one)),
                      member("waits", one.step.waits()), member("night", one.night));
    };
    const auto back = [&](const ReturnVisit& visit) {
        return object(member("return_after_s", visit.wait), member("return_at_s", visit.at),
                      member("return", clock(visit.at)));
    };
    return object(member("start_s", day.calendar.starts), member("one_by_one_s", day.one_by_one),
                  member("worked_s", day.worked), member("arc_share", day.arc_share()),
                  member("ends", clock(day.day.ends)), given(day.back, back),
                  member("steps", list_of(day.day.entries, entry)));
}

/// In seconds from the start of the first day; its periods are absent without a day.
Value::Object fire_watch_object(const FireWatch& watch) {
    const auto period = [](const WatchPeriod& one) {
        return object(member("from_s", one.from), member("until_s", one.until),
                      member("looked_until_s", one.looked_until));
    };
    return object(member("longest", watch.longest), member("rules", watch.rules),
                  member("after_s", watch.after), member("clear_m", watch.clear),
                  member("checks_for_s", watch.checks_for), member("checks_every_s", watch.checks_every),
                  member("periods", unless_empty(list_of(watch.periods, period))),
                  member("total_s", when(!watch.periods.empty(), watch.total)),
                  member("source", watch.after.source));
}

/// One that the job leaves open also has what to check and which field says it.
Value::Object caution_object(const Caution& caution) {
    const bool open = caution.applies != Applies::yes;
    return object(member("about", names_of(caution.about)), member("when", name_of(caution.when)),
                  member("applies", name_of(caution.applies)), member("text", caution.text),
                  member("because", caution.because), member("source", caution.source),
                  member("more_sources", unless_empty(caution.more_sources)),
                  member("check", when(open, caution.check)), member("field", when(open, caution.field)));
}

/// By their keys.
Value::Object sources_object(const Bibliography& sources) {
    Value::Object members;
    for (const auto& [key, source] : sources)
        members.push_back({key, object(member("title", source.title), member("edition", source.edition),
                                       member("place", source.place), member("kind", source.kind),
                                       member("seen", source.seen))});
    return members;
}

/// All but the workings.
Value::Object plan_head(const Plan& plan) {
    const auto need = [&](const Need& one) { return need_object(one, plan.units); };
    const auto assumed = [](const Assumed& one) {
        return object(member("field", one.path), member("value", one.value), member("source", one.source));
    };
    return object(
        member("format", "ringfill-plan/1"), member("title", plan.title),
        member("bores", list_of(plan.bores, bore_object)), member("totals", totals_object(plan)),
        member("day", given(plan.day, day_object)), member("fire_watch", fire_watch_object(plan.fire_watch)),
        member("take", list_of(plan.take, need)), member("quote", given(plan.quote, quote_object)),
        member("cautions", list_of(plan.cautions, caution_object)), member("notes", plan.notes),
        member("assumed", list_of(plan.assumed, assumed)), member("sources", sources_object(plan.sources)));
}

} // namespace

Value::Object need_object(const Need& need, UnitSystem units) {
    const auto pack = [](const PackCount& one) {
        return object(member("pack", one.pack), member("count", one.count));
    };
    return object(member("item", item_text(need, units)), member("need", need.need),
                  member("reserve", need.reserve), member("unit", need.kind.unit),
                  member("cover", list_of(need.cover, pack)),
                  member("supplied", when(need.pack_known, need.supplied)),
                  member("spare", when(need.pack_known, need.spare)), member("why", need.why),
                  member("source", need.source), member("id", need_id(need)));
}

Value plan_document(const Plan& plan) {
    return object(plan_head(plan), member("working", working_list(plan.working)));
}

std::string plan_line(const Plan& plan) {
    JsonText line;
    line.reserve((plan.working.size() + 100) * 400); // about what it takes, so that it grows once
    append_json(line, plan_head(plan));
    line.resize(line.size() - 1); // without the bracket that ends it
    line.append(std::string_view(",\"working\":"));
    put_working_list(line, plan.working);
    line.append(std::string_view("}\n"));
    return fmt::to_string(line);
}

} // namespace ringfill
