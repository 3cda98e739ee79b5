#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/field.hpp>
#include <ringfill/document/word_of.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// Whether a filler may go on a metal. No rule of a table is the last.
enum class Verdict { recommended, with_buffer, not_advised, no_table_says };

template <>
inline constexpr std::string_view enum_words<Verdict>[] = {"recommended", "with a buffer", "not advised",
                                                           "no table says"};

/// One rule: some fillers on some base metals, each by its group or as family/name.
struct Suit {
    std::string name;
    std::vector<std::string> fillers;
    std::vector<std::string> bases;
    Verdict verdict = Verdict::not_advised;
    /// Fillers for the layers between, family/name; empty unless with_buffer.
    std::vector<std::string> buffer;
    std::string why; ///< the end of a sentence
    std::string source;
};

/// Rules that stand elsewhere, in several tables.
using SuitRules = std::vector<std::reference_wrapper<const Suit>>;

/// A filler or a base metal as rules name it.
struct SuitName {
    std::string name;  ///< family/name
    std::string group; ///< empty: none
};

/// How long the name of a group may be [characters].
inline constexpr Span group_name{1, 40};

extern const Record suit_record;

/// Reads suits.json, file after file; a later file corrects or adds entry by entry. Throws Faulty
/// (Origin::table).
std::vector<Suit> read_suits(const std::vector<Document>& files, const Bibliography& sources);

/// The rule for a filler on a base metal, or null. One that names both goes before one that names one of
/// them, and that before one that knows both by their groups; of equals the most careful rules.
const Suit* find_suit(const SuitRules& rules, const SuitName& filler, const SuitName& base);

} // namespace ringfill
