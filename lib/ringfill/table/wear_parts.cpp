#include <ringfill/table/wear_parts.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr MadeField arc_life{
    {.name = "arc_life_h", .kind = Kind::sourced, .span = {0, 10'000, true}, .sample = R"([2, "practice"])"}};
constexpr MadeField wire_life{{.name = "wire_life_kg",
                               .kind = Kind::sourced,
                               .span = {0, 100'000, true},
                               .sample = R"([100, "practice"])"}};
constexpr MadeField part_length{
    {.name = "length_m", .kind = Kind::sourced, .span = {0, 100, true}, .sample = R"([4, "practice"])"}};

/// A field of every part that one of them fills a member from.
template <auto Member>
constexpr MadeField into(const MadeField& part) {
    return field<Member>(part.name, part.span, part.sample);
}

constexpr auto tip_record =
    table_record<WearParts>("a wear part", into<&WearParts::tip_life>(arc_life), wire_life, part_length);
constexpr auto nozzle_record =
    table_record<WearParts>("a wear part", into<&WearParts::nozzle_life>(arc_life), wire_life, part_length);
constexpr auto liner_record =
    table_record<WearParts>("a wear part", arc_life, into<&WearParts::liner_life>(wire_life),
                            into<&WearParts::liner_length>(part_length));

constexpr auto parts_record = table_record<WearParts>("parts", block<WearParts>("contact_tip", tip_record),
                                                      block<WearParts>("nozzle", nozzle_record),
                                                      block<WearParts>("liner", liner_record));

} // namespace

WearParts read_wear_parts(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<WearParts, R"("ringfill-wear_parts/1")">(
        files, sources, "the table of wear parts",
        block<WearParts>("parts", parts_record, "{ ... }").required());
}

} // namespace ringfill
