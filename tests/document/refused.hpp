#pragma once

#include <string>

#include <catch2/catch.hpp>

#include <ringfill/fault/fault.hpp>

namespace ringfill::testing {

/// All that a call is refused with, or "accepted" when it goes through; the origin must be the one stated.
template <class Call>
std::string refusal(Origin origin, const Call& call) {
    try {
        call();
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == origin);
        return faulty.what();
    }
    return "accepted";
}

} // namespace ringfill::testing
