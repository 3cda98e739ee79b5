#include <ringfill/material/guard.hpp>

#include <limits>

#include <fenv.h>

#ifdef __SSE__
#include <xmmintrin.h>
#endif

namespace ringfill {
namespace {

/// Whether a quotient below the smallest normal number is kept, and can be used again. Volatile: the machine
/// must do it now, not the compiler.
bool keeps_small_numbers() {
    volatile double least = std::numeric_limits<double>::min();
    volatile double small = least / 4;
    volatile double back = small * 4;
    return back == least;
}

} // namespace

ArithmeticModes arithmetic_modes() {
    ArithmeticModes modes;
    modes.rounding = std::fegetround();
#ifdef __GLIBC__
    modes.traps = ::fegetexcept();
#endif
#ifdef __SSE__
    constexpr unsigned raised = 0x3F; // the bits that tell what happened, which are no mode
    modes.control = _mm_getcsr() & ~raised;
#endif
    // With underflow trapped, trying it out would end the program; the traps differ then anyway.
    modes.small_numbers = modes.traps != 0 || keeps_small_numbers();
    return modes;
}

ArithmeticGuard::ArithmeticGuard() noexcept {
    std::fegetenv(&environment_);
    before_ = arithmetic_modes();
}

ArithmeticGuard::~ArithmeticGuard() {
    std::fesetenv(&environment_);
}

bool ArithmeticGuard::put_back() noexcept {
    const bool changed = arithmetic_modes() != before_;
    std::fesetenv(&environment_);
    return changed;
}

} // namespace ringfill
