#include <array>

#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array distance_words = {"km"sv, "miles"sv};
constexpr std::array materials_words = {"packs"sv, "use"sv};

constexpr Field price_of(std::string_view name, std::string_view help, std::string_view sample) {
    return {.name = name, .kind = Kind::number, .span = spans::price, .help = help, .sample = sample};
}

constexpr Field prices_of(std::string_view name, std::string_view help, std::string_view sample) {
    return {.name = name,
            .kind = Kind::number,
            .shape = Shape::named,
            .span = spans::price,
            .help = help,
            .sample = sample};
}

constexpr Field share_of(std::string_view name, std::string_view help, std::string_view sample) {
    return {.name = name, .kind = Kind::share, .span = spans::share, .help = help, .sample = sample};
}

// The names are those of the phases of a day.
constexpr std::array labour_fields = {
    price_of("set_up", "an hour of unloading, aligning, surveying and checking", "80"),
    price_of("heating", "an hour of preheating, reheating and holding hot", "80"),
    price_of("welding", "an hour of welding and cleaning layers", "95"),
    price_of("waiting", "an hour of waiting for the bore to cool", "50"),
    price_of("boring", "an hour of boring, facing and measuring", "90"),
    price_of("clean_up", "an hour of taking the bar off, packing and handing over", "80"),
    price_of("testing", "an hour of the crack test on the second visit", "90"),
    price_of("travel", "an hour on the road", "60"),
};

constexpr std::array travel_fields = {
    Field{.name = "distance",
          .kind = Kind::number,
          .span = spans::road,
          .help = "the way of one trip, there and back, with at most 3 decimals; 0 when there is none",
          .sample = "90"},
    Field{.name = "in",
          .kind = Kind::word,
          .fallback = "km",
          .fallback_source = "practice",
          .help = "what the distance is in",
          .sample = R"("km")",
          .words = distance_words},
    Field{.name = "time",
          .kind = Kind::time,
          .span = spans::road_time,
          .help = "time of one trip, there and back",
          .sample = R"("1 h 30 min")"},
    Field{.name = "trips",
          .kind = Kind::count,
          .span = spans::count,
          .help = "how many trips; when left out one for each day worked and one for the crack test",
          .sample = "3"},
};

constexpr std::array prices_fields = {
    Field{.name = "currency",
          .kind = Kind::text,
          .span = spans::name,
          .help =
              "the currency of all prices, by its code of ISO 4217, and a price may have two decimals more "
              "than it has; without it there is no quote",
          .sample = R"("EUR")",
          .starts = true},
    price_of("labour_hour", "price of an hour's work", "85"),
    Field{.name = "labour",
          .kind = Kind::object,
          .help = "an hour of one phase of the work, where it differs from labour_hour",
          .sample = R"({ "waiting": 50 })",
          .record = &labour_record},
    price_of("watch_hour", "an hour of the person who watches for fire", "40"),
    prices_of("wire_kg", "price of a kilogram of wire, electrodes or rods, by filler",
              R"({ "steel/ER70S-6": 4.2 })"),
    prices_of("packs",
              "price of one pack, or of one piece of what comes singly, by words of its name in what to "
              "take; the name with the most words counts",
              R"({ "11 kg propane cylinder": 32.5, "contact tips": 1.4 })"),
    Field{.name = "materials",
          .kind = Kind::word,
          .help = "which materials count: whole packs (when left out), or what is used of them",
          .sample = R"("packs")",
          .words = materials_words},
    price_of("power_kwh", "price of a kilowatt-hour from the mains", "0.31"),
    price_of("fuel_litre",
             "price of a litre of generator fuel; where it is given it counts instead of power_kwh", "1.75"),
    Field{.name = "travel",
          .kind = Kind::object,
          .help = "one trip to the machine and back",
          .sample = R"({ "distance": 90, "time": "1 h 30 min" })",
          .record = &travel_record},
    price_of("drive", "price of a kilometre or mile driven, as travel.in says", "0.65"),
    prices_of("extras", "whole amounts, each by what it is for", R"({ "lodging": 240 })"),
    share_of("contingency", "for what nobody foresees, on all costs; at most 3 decimals", R"("5 %")"),
    share_of("markup", "on costs and contingency; at most 3 decimals", R"("15 %")"),
    share_of("tax", "on all of it; at most 3 decimals", R"("20 %")"),
};

} // namespace

constinit const Record labour_record{"labour", "an hour of each phase of the work", labour_fields};
constinit const Record travel_record{"travel", "one trip to the machine and back", travel_fields};
constinit const Record prices_record{"prices", "what things cost, and what is put on top", prices_fields};

} // namespace ringfill
