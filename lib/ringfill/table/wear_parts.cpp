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

constexpr Field tip_fields[] = {into<&WearParts::tip_life>(arc_life), wire_life, part_length};
constexpr Field nozzle_fields[] = {into<&WearParts::nozzle_life>(arc_life), wire_life, part_length};
constexpr Field liner_fields[] = {arc_life, into<&WearParts::liner_life>(wire_life),
                                  into<&WearParts::liner_length>(part_length)};
constexpr Record tip_record = record_of<WearParts>("a wear part", "", tip_fields);
constexpr Record nozzle_record = record_of<WearParts>("a wear part", "", nozzle_fields);
constexpr Record liner_record = record_of<WearParts>("a wear part", "", liner_fields);

constexpr Field part_fields[] = {
    block<WearParts>("contact_tip", tip_record),
    block<WearParts>("nozzle", nozzle_record),
    block<WearParts>("liner", liner_record),
};
constexpr Record parts_record = record_of<WearParts>("parts", "", part_fields);

constexpr auto wear_fields =
    table_fields<R"("ringfill-wear_parts/1")">(block<WearParts>("parts", parts_record, "{ ... }").required());
constexpr Record wear_record = record_of<WearParts>("the table of wear parts", "", wear_fields);

} // namespace

WearParts read_wear_parts(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<WearParts>(files, sources, wear_record);
}

} // namespace ringfill
