#pragma once

#include <ringfill/document/entry.hpp>
#include <ringfill/job/workshop.hpp>

namespace ringfill {

Site read_site(const Entry& entry);

} // namespace ringfill
