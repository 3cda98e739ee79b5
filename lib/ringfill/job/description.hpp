#pragma once

#include <ringfill/document/field.hpp>

namespace ringfill {

// The job format, described once: the reader, the starter job, the help and the schema all work from these.
extern const Record job_record, site_record, procedure_record, approved_record, post_heat_record, bore_record,
    worn_record, station_record, attached_record, face_record, groove_record, hole_record, torch_record,
    heater_record, boring_record, prices_record, labour_record, travel_record;

} // namespace ringfill
