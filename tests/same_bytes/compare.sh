#!/usr/bin/env bash
# compare.sh FIRST_PROGRAM SECOND_PROGRAM [JOB...]: whether two builds of the program answer with the same bytes,
# by hand. Without jobs the samples of cli/demo. A job that one refuses the other must refuse in the same words.
set -u
first=$1
second=$2
shift 2
root=$(cd "$(dirname "$0")/../.." && pwd)
[ $# -gt 0 ] || set -- "$root"/cli/demo/*.json
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
compared=0
refused=0
different=0
for job in "$@"; do
  for view in "take --json" "sheet" "quote --json"; do
    # the view is several words on purpose
    # shellcheck disable=SC2086
    "$first" $view "$job" >"$folder/first" 2>"$folder/first_errors"
    first_status=$?
    # shellcheck disable=SC2086
    "$second" $view "$job" >"$folder/second" 2>"$folder/second_errors"
    second_status=$?
    compared=$((compared + 1))
    [ $first_status -eq 0 ] || refused=$((refused + 1))
    if [ $first_status -ne $second_status ] || ! cmp -s "$folder/first" "$folder/second" ||
      ! cmp -s "$folder/first_errors" "$folder/second_errors"; then
      different=$((different + 1))
      echo "$job: $view differs (status $first_status and $second_status)"
      diff "$folder/first" "$folder/second" | head -n 4 | cut -c 1-200
    fi
  done
done
echo "$compared answers compared, $refused of them refusals, $different different"
[ $compared -gt 0 ] && [ $different -eq 0 ]
