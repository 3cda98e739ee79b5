#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// A text as typed or pasted, brought to the plain signs that measure() reads: every Unicode dash and minus
/// becomes
/// '-', every blank ' ', the fraction slash '/', and a fraction character such as ½ becomes " 1/2". Outer
/// blanks go.
std::string plain_signs(std::string_view typed);

} // namespace ringfill
