#include <ringfill/table/signature.hpp>

namespace ringfill {

bool has_signature(const Entry& table) {
    return table.value().object() && table.word("format") && table.text("description");
}

} // namespace ringfill
