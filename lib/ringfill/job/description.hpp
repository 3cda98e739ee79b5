#pragma once

#include <ringfill/document/field.hpp>

namespace ringfill {

// The job format, described once: the reader, the starter job, the help and the schema all work from these.
extern const Record job_record;
extern const Record site_record;
extern const Record procedure_record;
extern const Record approved_record;
extern const Record post_heat_record;
extern const Record bore_record;
extern const Record worn_record;
extern const Record station_record;
extern const Record attached_record;
extern const Record face_record;
extern const Record groove_record;
extern const Record hole_record;
extern const Record torch_record;
extern const Record heater_record;
extern const Record boring_record;
extern const Record prices_record;
extern const Record labour_record;
extern const Record travel_record;

} // namespace ringfill
