#include <ringfill/report/json/cautions_json.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

Value words_list(const std::vector<std::string>& words) {
    return Value(words | ranges::views::transform([](const std::string& word) { return Value(word); }) |
                 ranges::to<Value::List>());
}

Value period_object(const WatchPeriod& period) {
    return Value::Object{{"from_s", period.from.value()},
                         {"until_s", period.until.value()},
                         {"looked_until_s", period.looked_until.value()}};
}

} // namespace

Value caution_object(const Caution& caution) {
    Value::Object object{{"about", names_of(caution.about)},    {"when", name_of(caution.when)},
                         {"applies", name_of(caution.applies)}, {"text", caution.text},
                         {"because", caution.because},          {"source", caution.source}};
    if (!caution.more_sources.empty())
        object.push_back({"more_sources", words_list(caution.more_sources)});
    if (caution.applies != Applies::yes) {
        object.push_back({"check", caution.check});
        object.push_back({"field", caution.field});
    }
    return object;
}

Value fire_watch_object(const FireWatch& watch) {
    Value::Object object{{"longest", watch.longest},
                         {"rules", words_list(watch.rules)},
                         {"after_s", watch.after.value.value()},
                         {"clear_m", watch.clear.value.value()}};
    if (watch.checks_for) {
        object.push_back({"checks_for_s", watch.checks_for->value.value()});
        object.push_back({"checks_every_s", watch.checks_every->value.value()});
    }
    if (!watch.periods.empty()) {
        object.push_back({"periods", Value(watch.periods | ranges::views::transform(period_object) |
                                           ranges::to<Value::List>())});
        object.push_back({"total_s", watch.total.value()});
    }
    object.push_back({"source", watch.after.source});
    return object;
}

Value sources_object(const Bibliography& sources) {
    Value::Object object;
    for (const auto& [key, source] : sources)
        object.push_back({key, Value::Object{{"title", source.title},
                                             {"edition", source.edition},
                                             {"place", source.place},
                                             {"kind", source.kind},
                                             {"seen", source.seen}}});
    return object;
}

} // namespace ringfill
