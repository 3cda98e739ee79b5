#include <ringfill/table/gases.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr std::string_view cylinder_words[] = {"argon", "argon_mixture", "argon_helium", "carbon_dioxide"};

constexpr auto gas_record = table_record<Gas>(
    "a gas", field<&Gas::words>("words", table_words, R"("argon")").required(),
    field<&Gas::holds>("holds", cylinder_words, R"("argon")").required(),
    field<&Gas::flow_L_min_per_mm>("flow_L_min_per_mm", Span{0, 100, true}, R"([12, "practice"])").required(),
    field<&Gas::sprays>("sprays", "true"),
    field<&Gas::spray_times>("spray_times", Span{1, 5}, R"([1.1, 1.35, "practice"])"),
    field<&Gas::spray_note>("spray_note", table_words, R"("it takes a clean wire")"),
    source_field<&Gas::composition_source>("composition_source", R"("ISO14175")").required());

} // namespace

std::vector<Gas> read_gases(const std::vector<Document>& files, const Bibliography& sources) {
    return read_rows<Gas, R"("ringfill-gases/1")">(files, sources, "the table of gases", "gases", gas_record);
}

} // namespace ringfill
