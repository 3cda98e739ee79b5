#include <ringfill/table/suits.hpp>

#include <utility>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/max_element.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr std::string_view verdict_words[] = {"recommended", "with_buffer", "not_advised"};

template <std::vector<std::string> Suit::*Names>
void read_names(Suit& suit, const Entry& entry, const Field& field) {
    for (const Spot& spot : entry.elements(field))
        if (const std::string* text = spot.value->text(); text && !text->empty())
            (suit.*Names).push_back(*text);
        else
            spot.refuse("is not a name", R"(write a group, or a name such as "steel/C45")");
}

template <std::vector<std::string> Suit::*Names>
constexpr MadeField names_field(std::string_view name, std::size_t most, std::string_view sample) {
    return field<&read_names<Names>>(name, list_of(Span{}, 1, most), sample).holds(Kind::text, Shape::list);
}

void check_suit(Suit& suit, const Entry& entry) {
    const bool has_buffer = entry.has("buffer");
    if (suit.verdict == Verdict::with_buffer && !has_buffer)
        entry.refuse_missing("buffer", R"(name the fillers of the buffer, such as ["stainless/ER309L"])");
    if (suit.verdict != Verdict::with_buffer && has_buffer)
        entry.refuse("buffer", "stands beside a verdict without one",
                     R"(write the verdict "with_buffer" or take it out)");
}

constexpr Field suit_fields[] = {
    names_field<&Suit::fillers>("fillers", 100, R"(["carbon_steel"])").required(),
    names_field<&Suit::bases>("bases", 100, R"(["low_carbon_steel"])").required(),
    field<&Suit::verdict>("verdict", verdict_words, R"("recommended")").required(),
    names_field<&Suit::buffer>("buffer", 20, R"(["stainless/ER309L"])"),
    field<&Suit::why>("why", table_words, R"("it is of the same kind")").required(),
    source_field<&Suit::source>("source", R"("practice")").required(),
};

/// 2 for its own name, 1 for its group, 0 when a rule does not know it.
int closeness(const std::vector<std::string>& known, const SuitName& one) {
    if (ranges::contains(known, one.name))
        return 2;
    return !one.group.empty() && ranges::contains(known, one.group) ? 1 : 0;
}

} // namespace

constinit const Record suit_record = record_of<Suit, check_suit>("what suits", "", suit_fields);

std::vector<Suit> read_suits(const std::vector<Document>& files, const Bibliography& sources) {
    return read_table<Rows<Suit>, R"("ringfill-suits/1")">(
               files, sources, "the table of what suits",
               field<&Rows<Suit>::rows>("suits", suit_record, "{ ... }"))
        .rows;
}

const Suit* find_suit(const SuitRules& rules, const SuitName& filler, const SuitName& base) {
    const auto rank = [&](const Suit& rule) {
        const int of_filler = closeness(rule.fillers, filler);
        const int of_base = closeness(rule.bases, base);
        return std::pair(of_filler > 0 && of_base > 0 ? of_filler + of_base : 0, rule.verdict);
    };
    const auto best = ranges::max_element(rules, {}, rank);
    return best != rules.end() && rank(*best).first > 0 ? &best->get() : nullptr;
}

} // namespace ringfill
