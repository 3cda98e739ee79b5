#pragma once

#include <ringfill/document/entry.hpp>
#include <ringfill/job/workshop.hpp>

namespace ringfill {

Site read_site(const Entry& entry);
Torch read_torch(const Entry& entry);
Heater read_heater(const Entry& entry);
BoringBar read_boring_bar(const Entry& entry);

} // namespace ringfill
