#include <ringfill/report/json/json.hpp>

#include <ringfill/caution/replaced_rules.hpp>
#include <ringfill/day/calendar.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/report/json/bore_json.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/quote_json.hpp>
#include <ringfill/report/json/rows.hpp>
#include <ringfill/report/json/schema_of.hpp>
#include <ringfill/report/json/working_json.hpp>

namespace ringfill {
namespace {

auto totals_object(const Plan& plan) {
    const Totals& totals = plan.totals;
    return object(member<"laid_kg">(totals.laid), member<"wire_kg">(when(totals.wire > Mass(), totals.wire)),
                  member<"pieces">(when(totals.pieces > 0, totals.pieces)),
                  member<"pieces_kg">(when(totals.pieces > 0, totals.piece_mass)),
                  member<"arc_s">(totals.arc), member<"gas_l">(totals.gas),
                  member<"elapsed_s">(given(plan.day, [](const DayPlan& day) { return day.day.ends; })));
}

auto day_object(const DayPlan& day) {
    const auto clock = [&](Time time) { return day_and_clock(day.calendar, time); };
    const auto entry = [&](const DayEntry& one) {
        return object(member<"at">(clock(one.from)), member<"from_s">(one.from), member<"to_s">(one.to),
                      member<"bore">(unless_empty(one.bore)), member<"step">(words_of(one)),
                      member<"waits">(one.step.waits()), member<"night">(one.night),
                      member<"idle">(one.phase == Phase::idle));
    };
    const auto back = [&](const ReturnVisit& visit) {
        return object(member<"return_after_s">(visit.wait), member<"return_at_s">(visit.at),
                      member<"return">(clock(visit.at)));
    };
    return object(member<"start_s">(day.calendar.starts), member<"one_by_one_s">(day.one_by_one),
                  member<"worked_s">(day.worked), member<"waited_s">(day.waited), member<"idle_s">(day.idle),
                  member<"breaks_s">(day.breaks), member<"arc_share">(day.arc_share()),
                  member<"ends">(clock(day.day.ends)), given(day.back, back),
                  member<"steps">(list_of(day.day.entries, entry)));
}

/// In seconds from the start of the first day; its periods are absent without a day.
auto fire_watch_object(const FireWatch& watch) {
    const auto period = [](const WatchPeriod& one) {
        return object(member<"from_s">(one.from), member<"until_s">(one.until),
                      member<"looked_until_s">(one.looked_until));
    };
    return object(member<"longest">(watch.longest), member<"rules">(watch.rules),
                  member<"after_s">(watch.after), member<"clear_m">(watch.clear),
                  member<"checks_for_s">(watch.checks_for), member<"checks_every_s">(watch.checks_every),
                  member<"periods">(unless_empty(list_of(watch.periods, period))),
                  member<"total_s">(when(!watch.periods.empty(), watch.total)),
                  member<"source">(watch.after.source));
}

/// One that the job leaves open also has what to check and which field says it.
auto caution_object(const Caution& caution) {
    const bool open = caution.applies != Applies::yes;
    return object(member<"about">(names_of(caution.about)), member<"when">(caution.when),
                  member<"applies">(caution.applies), member<"text">(caution.text),
                  member<"because">(caution.because), member<"source">(caution.source),
                  member<"more_sources">(unless_empty(caution.more_sources)),
                  member<"check">(when(open, caution.check)), member<"field">(when(open, caution.field)));
}

auto source_object(const Bibliography::value_type& keyed) {
    const Source& source = keyed.second;
    return object(member<"title">(source.title), member<"edition">(source.edition),
                  member<"place">(source.place), member<"kind">(source.kind), member<"seen">(source.seen));
}

/// All but the workings.
auto plan_head(const Plan& plan) {
    const auto need = [&](const Need& one) { return need_object(one, plan.units); };
    const auto assumed = [](const Assumed& one) {
        return object(member<"field">(one.path), member<"value">(one.value), member<"source">(one.source));
    };
    const auto doubt = [](const Doubt& one) {
        return object(member<"field">(one.field), member<"value">(one.value), member<"usual">(one.usual),
                      member<"like">(unless_empty(one.like)), member<"text">(to_string(one)));
    };
    const auto figure = [&](const LoweredFigure& one) {
        return object(member<"field">(one.field), member<"what">(std::string(one.words)),
                      member<"ours">(shown_figure(one.ours, one.unit, plan.units)),
                      member<"theirs">(shown_figure(one.theirs, one.unit, plan.units)));
    };
    const auto table = [&](const ReplacedRow& one) {
        return object(member<"file">(one.file), member<"table">(one.table), member<"row">(one.row),
                      member<"fields">(one.fields), member<"lowered">(list_of(one.lowered, figure)));
    };
    return object(
        member<"format">(Always<"ringfill-plan/1">()), member<"title">(plan.title),
        member<"doubts">(list_of(plan.doubts, doubt)), member<"tables">(list_of(plan.tables, table)),
        member<"bores">(list_of(plan.bores, bore_object)), member<"totals">(totals_object(plan)),
        member<"day">(given(plan.day, day_object)), member<"fire_watch">(fire_watch_object(plan.fire_watch)),
        member<"take">(list_of(plan.take, need)), member<"quote">(given(plan.quote, quote_object)),
        member<"cautions">(list_of(plan.cautions, caution_object)), member<"notes">(plan.notes),
        member<"assumed">(list_of(plan.assumed, assumed)),
        member<"sources">(by_name(plan.sources, &Bibliography::value_type::first, source_object)));
}

auto whole_plan(const Plan& plan) {
    return object(plan_head(plan), member<"working">(list_of(plan.working, working_object)));
}

} // namespace

Value plan_document(const Plan& plan) {
    return whole_plan(plan);
}

std::string plan_schema() {
    Value::Object schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                            {"$id", "urn:ringfill:plan:1"},
                            {"title", "ringfill-plan/1"}};
    put_part(schema, SchemaOf<decltype(whole_plan(std::declval<const Plan&>()))>::made());
    return write_json(schema);
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
