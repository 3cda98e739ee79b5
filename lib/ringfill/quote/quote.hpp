#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What the lines of a quote are gathered by.
enum class QuotePart { packs, use, labour, power, travel, extras };

/// "materials by pack"
std::string_view in_words(QuotePart part);

struct QuoteSection {
    QuotePart part = QuotePart::packs;
    std::vector<QuoteLine> lines;
    bool counts = true;       ///< of packs and use only one does
    std::optional<Minor> sum; ///< of the amounts that are known; nothing: none is
};

/// A share put on top of what stands before it.
struct OnTop {
    std::string name; ///< contingency, mark-up, tax
    ExactShare share = 0;
    Minor of = 0;
    Minor amount = 0;
};

/// What a job costs. The total is the sum of its lines as printed, in the smallest unit of the currency.
struct Quote {
    Currency currency;
    std::vector<QuoteSection> sections;
    std::optional<Minor> subtotal; ///< of the sections that count; nothing: no amount is known
    std::vector<OnTop> on_top;
    std::optional<Minor> total;
    bool taxed = false;
    std::vector<std::string> missing; ///< what keeps it from being whole, line by line; of those that count
    std::vector<std::string> notes;

    bool is_whole() const { return missing.empty(); }
};

/// The quote of a job. Noted: prices that cannot be counted exactly in this currency, and amounts too large.
Quote quote(const QuoteFacts& facts, std::vector<Fault>& faults);

} // namespace ringfill
