// Links the installed library and asks it something that runs its code.
#include <cstdio>
#include <ringfill/units/show.hpp>

int main() {
    std::puts(ringfill::show(ringfill::millimetres(90.4), ringfill::UnitSystem::metric).c_str());
}
