
#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/job/spans.hpp>

namespace ringfill {
namespace {

using namespace spans;

constexpr std::string_view distance_words[] = {"km", "miles"};
constexpr std::string_view materials_words[] = {"packs", "use"};

constexpr Field hour_of(std::string_view name, std::string_view sample, std::string_view help) {
    return bare_field(name, price, sample, help).holds(Kind::number);
}

// The names are those of the phases of a day; Prices::labour holds them by these.
constexpr Field labour_fields[] = {
    hour_of("set_up", "80", "an hour of unloading, aligning, surveying and checking"),
    hour_of("heating", "80", "an hour of preheating, reheating and holding hot"),
    hour_of("welding", "95", "an hour of welding and cleaning layers"),
    hour_of("waiting", "50", "an hour of waiting for the bore to cool"),
    hour_of("idle", "30",
            "an hour by day with nobody on site until the next morning; not charged when left out"),
    hour_of("boring", "90", "an hour of boring, facing and measuring"),
    hour_of("clean_up", "80", "an hour of taking the bar off, packing and handing over"),
    hour_of("testing", "90", "an hour of the crack test on the second visit"),
    hour_of("travel", "60", "an hour on the road"),
};

void read_labour(Prices& prices, const Entry& entry, const Field& field) {
    if (const auto labour = entry.object(field))
        for (const Field& phase : labour_fields)
            if (Decimal hour; FieldOf<Decimal>::fill(*labour, phase, hour))
                prices.labour.emplace_back(phase.name, hour);
}

Value give_labour(const Prices& prices) {
    return FieldOf<NamedPrices>::give(labour_fields[0], prices.labour);
}

constexpr Field travel_fields[] = {
    // km or miles, round the earth
    field<&Travel::distance>(
        "distance", Span{0, 40'000}, "90",
        "the way of one trip, there and back, with at most 3 decimals; 0 when there is none")
        .decimals(3),
    by_practice<&Travel::in_miles>("in", distance_words, R"("km")", "what the distance is in"),
    // s, ten days
    field<&Travel::time>("time", Span{0, 864'000}, R"("1 h 30 min")", "time of one trip, there and back"),
    field<&Travel::trips>("trips", count, "3",
                          "how many trips; when left out one for each day worked and one for the crack test"),
};

constexpr Field prices_fields[] = {
    shown<&Prices::currency>("currency", name, R"("EUR")",
                             "the currency of all prices, by its code of ISO 4217, and a price may have two "
                             "decimals more than it has; without it there is no quote"),
    field<&Prices::labour_hour>("labour_hour", price, "85", "price of an hour's work"),
    field<&read_labour>("labour", labour_record, R"({ "waiting": 50 })",
                        "an hour of one phase of the work, where it differs from labour_hour")
        .given_by<give_labour>(),
    field<&Prices::watch_hour>("watch_hour", price, "40", "an hour of the person who watches for fire"),
    field<&Prices::wire_kg>("wire_kg", price, R"({ "steel/ER70S-6": 4.2 })",
                            "price of a kilogram of wire, electrodes or rods, by filler"),
    field<&Prices::packs>("packs", price, R"({ "11 kg propane cylinder": 32.5, "contact tips": 1.4 })",
                          "price of one pack, or of one piece of what comes singly, by words of its name in "
                          "what to take; the name with the most words counts"),
    field<&Prices::by_use>("materials", materials_words, R"("packs")",
                           "which materials count: whole packs (when left out), or what is used of them"),
    field<&Prices::power_kwh>("power_kwh", price, "0.31", "price of a kilowatt-hour from the mains"),
    field<&Prices::fuel_litre>(
        "fuel_litre", price, "1.75",
        "price of a litre of generator fuel; where it is given it counts instead of power_kwh"),
    field<&Prices::travel>("travel", travel_record, R"({ "distance": 90, "time": "1 h 30 min" })",
                           "one trip to the machine and back"),
    field<&Prices::drive>("drive", price, "0.65", "price of a kilometre or mile driven, as travel.in says"),
    field<&Prices::extras>("extras", price, R"({ "lodging": 240 })", "whole amounts, each by what it is for"),
    field<&Prices::contingency>("contingency", share, R"("5 %")",
                                "for what nobody foresees, on all costs; at most 3 decimals"),
    field<&Prices::markup>("markup", share, R"("15 %")", "on costs and contingency; at most 3 decimals"),
    field<&Prices::tax>("tax", share, R"("20 %")", "on all of it; at most 3 decimals"),
};

} // namespace

const Record labour_record{"labour", "an hour of each phase of the work", labour_fields};
const Record travel_record = record_of<Travel>("travel", "one trip to the machine and back", travel_fields);
const Record prices_record =
    record_of<Prices>("prices", "what things cost, and what is put on top", prices_fields);

} // namespace ringfill
