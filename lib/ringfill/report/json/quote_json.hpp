#pragma once

#include <ringfill/report/json/members.hpp>
#include <ringfill/report/json/rows.hpp>
#include <ringfill/say/quote_words.hpp>

namespace ringfill {

/// The quote. Amounts are whole numbers of the smallest unit (…_minor), each with its text; prices are exact
/// decimals and so stand as texts. What is missing is said and has no amount.
inline auto quote_object(const Quote& quote) {
    const int exponent = quote.currency.exponent.value;
    const auto money = [&](Minor amount) { return money_text(amount, exponent); };
    const auto section = [&](const QuoteSection& one) {
        const auto line = [&](const QuoteLine& each) { return line_object(each, exponent); };
        return object(member<"name">(one.part), member<"counts">(one.counts),
                      member<"lines">(list_of(one.lines, line)), member<"sum_minor">(one.sum),
                      member<"sum">(given(one.sum, money)));
    };
    const auto on_top = [&](const OnTop& top) {
        return object(member<"name">(top.name), member<"share">(static_cast<double>(top.share) / whole_share),
                      member<"amount_minor">(top.amount), member<"amount">(money(top.amount)));
    };
    const auto sums = [&](Minor subtotal) {
        return object(member<"subtotal_minor">(subtotal), member<"subtotal">(money(subtotal)),
                      member<"on_top">(list_of(quote.on_top, on_top)), member<"taxed">(quote.taxed),
                      member<"total_minor">(quote.total), member<"total">(given(quote.total, money)));
    };
    return object(member<"currency">(quote.currency.name), member<"exponent">(exponent),
                  member<"whole">(quote.is_whole()), member<"missing">(quote.missing),
                  member<"sections">(list_of(quote.sections, section)), given(quote.subtotal, sums),
                  member<"notes">(quote.notes));
}

} // namespace ringfill
