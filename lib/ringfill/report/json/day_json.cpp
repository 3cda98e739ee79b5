#include <ringfill/report/json/day_json.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/day/calendar.hpp>

namespace ringfill {

Value day_object(const DayPlan& day) {
    const auto entry = [&](const DayEntry& one) -> Value {
        Value::Object object{{"at", day_and_clock(day.calendar, one.from)},
                             {"from_s", one.from.value()},
                             {"to_s", one.to.value()}};
        if (!one.bore.empty())
            object.push_back({"bore", one.bore});
        object.push_back({"step", one.step});
        object.push_back({"waits", one.waits});
        object.push_back({"night", one.night});
        return object;
    };
    Value::Object object{{"start_s", day.calendar.starts.value()},
                         {"one_by_one_s", day.one_by_one.value()},
                         {"worked_s", day.worked.value()},
                         {"arc_share", day.arc_share()},
                         {"ends", day_and_clock(day.calendar, day.day.ends)}};
    if (day.back) {
        object.push_back({"return_after_s", day.back->wait.value()});
        object.push_back({"return_at_s", day.back->at.value()});
        object.push_back({"return", day_and_clock(day.calendar, day.back->at)});
    }
    object.push_back(
        {"steps", Value(day.day.entries | ranges::views::transform(entry) | ranges::to<Value::List>())});
    return object;
}

} // namespace ringfill
