#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>
#include <variant>

#include <ringfill/fault/printable.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/unit.hpp>

using namespace ringfill;

namespace {

constexpr std::array kinds = {
    Kind::share,       Kind::length,  Kind::volume,  Kind::mass,  Kind::speed,       Kind::volume_flow,
    Kind::mass_flow,   Kind::current, Kind::voltage, Kind::power, Kind::conductance, Kind::energy_per_length,
    Kind::temperature, Kind::angle,   Kind::turning, Kind::time};

void require(bool holds) {
    if (!holds)
        std::abort();
}

} // namespace

/// Whatever is typed, each kind gives a finite value or a reason and a remedy that a terminal can show.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    for (const Kind kind : kinds) {
        const auto result = measure(text, kind);
        if (const double* value = std::get_if<double>(&result)) {
            require(std::isfinite(*value));
            continue;
        }
        const auto& fault = std::get<NotMeasured>(result);
        require(!fault.reason.empty() && !fault.remedy.empty());
        require(printable(fault.reason, 1'000) == fault.reason &&
                printable(fault.remedy, 2'000) == fault.remedy);
        require(!fault.bare_length || std::isfinite(*fault.bare_length));
    }
    return 0;
}
