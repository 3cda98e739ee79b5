#pragma once

#include <ringfill/document/field.hpp>

namespace ringfill {

// The format of a family's table, described once.
extern const Record family_record;
extern const Record base_record;
extern const Record filler_advice_record;
extern const Record filler_record;
extern const Record filler_size_record;
extern const Record melting_record;
extern const Record window_record;
extern const Record windows_record;
extern const Record feed_point_record;
extern const Record rate_point_record;

} // namespace ringfill
