#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ringfill {

/// A text as typed or pasted, brought to the plain signs that measure() reads: every Unicode dash and minus
/// becomes
/// '-', every blank ' ', the fraction slash '/', and a fraction character such as ½ becomes " 1/2". Outer
/// blanks go.
std::string plain_signs(std::string_view typed);

/// Every sign that plain_signs() takes for a plain one, the plain one first: for "-" all dashes.
std::vector<std::string_view> spellings_of(std::string_view plain);

/// The fraction characters that plain_signs() writes out, such as ½.
std::vector<std::string_view> fraction_signs();

} // namespace ringfill
