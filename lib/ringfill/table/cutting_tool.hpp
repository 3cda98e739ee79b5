#pragma once

#include <ringfill/document/word_of.hpp>

namespace ringfill {

/// What the edges of the bar are made of.
enum class CuttingTool { carbide, hss };

template <>
inline constexpr std::string_view enum_words<CuttingTool>[] = {"carbide", "HSS"};

} // namespace ringfill
