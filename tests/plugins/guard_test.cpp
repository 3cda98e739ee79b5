#include <catch2/catch.hpp>

#include <cfenv>
#include <limits>

#include <fenv.h>

#ifdef __SSE__
#include <xmmintrin.h>
#endif

#include <ringfill/material/guard.hpp>

using namespace ringfill;

TEST_CASE("a guard leaves what was not changed alone") {
    ArithmeticGuard guard;
    const volatile double one = 1;
    const volatile double third = one / 3; // raises the flag of an inexact result, which is no mode
    CHECK(third > 0);
    CHECK_FALSE(guard.put_back());
}

TEST_CASE("a guard tells of another rounding and puts it back") {
    const int before = std::fegetround();
    ArithmeticGuard guard;
    std::fesetround(FE_TOWARDZERO);
    CHECK(guard.put_back());
    CHECK(std::fegetround() == before);
    CHECK_FALSE(guard.put_back());
}

TEST_CASE("a guard puts back at its end") {
    const ArithmeticModes before = arithmetic_modes();
    {
        const ArithmeticGuard guard;
        std::fesetround(FE_DOWNWARD);
    }
    CHECK(arithmetic_modes() == before);
}

#ifdef __GLIBC__
TEST_CASE("a guard tells of traps and puts them back") {
    const int before = ::fegetexcept();
    ArithmeticGuard guard;
    ::feenableexcept(FE_INVALID | FE_UNDERFLOW);
    CHECK(guard.put_back());
    CHECK(::fegetexcept() == before);
}
#endif

#ifdef __SSE__
TEST_CASE("a guard tells of small numbers taken as zero and puts that back") {
    constexpr unsigned flush_to_zero = 0x8000;
    constexpr unsigned denormals_are_zero = 0x0040;
    for (const unsigned bit : {flush_to_zero, denormals_are_zero}) {
        ArithmeticGuard guard;
        _mm_setcsr(_mm_getcsr() | bit);
        CHECK_FALSE(arithmetic_modes().small_numbers);
        CHECK(guard.put_back());
        const volatile double least = std::numeric_limits<double>::min();
        CHECK(least / 4 != 0);
    }
}
#endif
