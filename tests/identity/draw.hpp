#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <random>

namespace ringfill::testing {

/// Draws that come out alike everywhere: the distributions of the standard library may differ.
class Draw {
  public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}

    int whole(int low, int high) {
        return low + static_cast<int>(engine_() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(int percent) { return whole(1, 100) <= percent; }
    /// From 0 to under 1.
    double share() { return std::ldexp(static_cast<double>(engine_() >> 11), -53); }
    /// A size as people write it, to 0.01.
    double size(double low, double high) { return std::round((low + (high - low) * share()) * 100) / 100; }
    /// One of a list that is not empty.
    template <class List>
    const auto& of(const List& list) {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(list.size()) - 1))];
    }

  private:
    std::mt19937_64 engine_;
};

} // namespace ringfill::testing
