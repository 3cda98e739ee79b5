#!/usr/bin/env bash
# From a bare Debian 12 to all tests passed: installs what is missing, builds, runs every test of the release build.
# A second run builds nothing that has not changed. Words on the command line go to ctest.
set -euo pipefail
cd "$(dirname "$0")/.."
preset=${RINGFILL_PRESET:-release}

mapfile -t needs < <(cat cli/build_needs.txt tests/test_needs.txt)
bash cli/install_needs.sh "${needs[@]}"
[ -f "build/$preset/build.ninja" ] || cmake --preset "$preset"
cmake --build --preset "$preset"
ctest --preset "$preset" --parallel "$(nproc)" "$@"
