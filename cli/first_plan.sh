#!/usr/bin/env bash
# From a bare Debian 12 to the plan of the sample job: installs what is missing, builds the program, runs it.
# A second run builds nothing. A job file named on the command line is planned instead of the sample.
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
job=$(realpath "${1:-$root/cli/demo/dredger-pivots.json}")
cd "$root"

mapfile -t needs < cli/build_needs.txt
bash cli/install_needs.sh "${needs[@]}"
log=$(mktemp)
trap 'rm -f "$log"' EXIT
build() {
  [ -f build/plain/build.ninja ] || cmake -S . -B build/plain -G Ninja -DCMAKE_BUILD_TYPE=Release -DRINGFILL_TESTS=OFF
  cmake --build build/plain
}
echo "building (about two minutes the first time) ..." >&2
if ! build >"$log" 2>&1; then
  cat "$log" >&2
  exit 1
fi
exec build/plain/ringfill take "$job"
