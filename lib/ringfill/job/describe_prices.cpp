
#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

constexpr std::string_view distance_words[] = {"km", "miles"};
constexpr std::string_view materials_words[] = {"packs", "use"};

constexpr Field hour_of(std::string_view name, std::string_view help, std::string_view sample) {
    return bare_field(name, price, help, sample)
        .holds(Kind::number)
        .decimals(FieldOf<Decimal>::most_decimals);
}

// The names are those of the phases of a day; NamedPrices holds them by these.
constexpr Field labour_fields[] = {
    hour_of("set_up", "an hour of unloading, aligning, surveying and checking", "80"),
    hour_of("heating", "an hour of preheating, reheating and holding hot", "80"),
    hour_of("welding", "an hour of welding and cleaning layers", "95"),
    hour_of("waiting", "an hour of waiting for the bore to cool", "50"),
    hour_of("boring", "an hour of boring, facing and measuring", "90"),
    hour_of("clean_up", "an hour of taking the bar off, packing and handing over", "80"),
    hour_of("testing", "an hour of the crack test on the second visit", "90"),
    hour_of("travel", "an hour on the road", "60"),
};

constexpr Field travel_fields[] = {
    // km or miles, round the earth
    field<&Travel::distance>(
        "distance", Span{0, 40'000},
        "the way of one trip, there and back, with at most 3 decimals; 0 when there is none", "90")
        .decimals(3),
    field<&Travel::in_miles>("in", distance_words, "what the distance is in", R"("km")")
        .fallback("km", "practice"),
    // s, ten days
    field<&Travel::time>("time", Span{0, 864'000}, "time of one trip, there and back", R"("1 h 30 min")"),
    field<&Travel::trips>("trips", count,
                          "how many trips; when left out one for each day worked and one for the crack test",
                          "3"),
};

constexpr Field prices_fields[] = {
    field<&Prices::currency>("currency", name,
                             "the currency of all prices, by its code of ISO 4217, and a price may have two "
                             "decimals more than it has; without it there is no quote",
                             R"("EUR")")
        .starts(),
    field<&Prices::labour_hour>("labour_hour", price, "price of an hour's work", "85"),
    field<&Prices::labour>("labour", labour_record,
                           "an hour of one phase of the work, where it differs from labour_hour",
                           R"({ "waiting": 50 })")
        .holds(Kind::object),
    field<&Prices::watch_hour>("watch_hour", price, "an hour of the person who watches for fire", "40"),
    field<&Prices::wire_kg>("wire_kg", price, "price of a kilogram of wire, electrodes or rods, by filler",
                            R"({ "steel/ER70S-6": 4.2 })"),
    field<&Prices::packs>("packs", price,
                          "price of one pack, or of one piece of what comes singly, by words of its name in "
                          "what to take; the name with the most words counts",
                          R"({ "11 kg propane cylinder": 32.5, "contact tips": 1.4 })"),
    field<&Prices::by_use>("materials", materials_words,
                           "which materials count: whole packs (when left out), or what is used of them",
                           R"("packs")"),
    field<&Prices::power_kwh>("power_kwh", price, "price of a kilowatt-hour from the mains", "0.31"),
    field<&Prices::fuel_litre>(
        "fuel_litre", price,
        "price of a litre of generator fuel; where it is given it counts instead of power_kwh", "1.75"),
    field<&Prices::travel>("travel", travel_record, "one trip to the machine and back",
                           R"({ "distance": 90, "time": "1 h 30 min" })"),
    field<&Prices::drive>("drive", price, "price of a kilometre or mile driven, as travel.in says", "0.65"),
    field<&Prices::extras>("extras", price, "whole amounts, each by what it is for", R"({ "lodging": 240 })"),
    field<&Prices::contingency>("contingency", share,
                                "for what nobody foresees, on all costs; at most 3 decimals", R"("5 %")"),
    field<&Prices::markup>("markup", share, "on costs and contingency; at most 3 decimals", R"("15 %")"),
    field<&Prices::tax>("tax", share, "on all of it; at most 3 decimals", R"("20 %")"),
};

} // namespace

const Record labour_record{"labour", "an hour of each phase of the work", labour_fields};
const Record travel_record = record_of<Travel>("travel", "one trip to the machine and back", travel_fields);
const Record prices_record =
    record_of<Prices>("prices", "what things cost, and what is put on top", prices_fields);

} // namespace ringfill
