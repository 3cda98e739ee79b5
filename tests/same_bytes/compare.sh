#!/usr/bin/env bash
# compare.sh FIRST_PROGRAM SECOND_PROGRAM [JOB...]: whether two builds of the program answer with the same bytes in
# every view and format, by hand. Without jobs: the samples of cli/demo, the jobs beside this script, the sample beside
# a family that is broken and that it does not name, and every page that needs no job. What one refuses the other must
# refuse in the same words.
set -u
first=$1
second=$2
shift 2
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
compared=0
refused=0
different=0

same() { # the words of a command line
  "$first" "$@" >"$folder/first" 2>"$folder/first_errors"
  first_status=$?
  "$second" "$@" >"$folder/second" 2>"$folder/second_errors"
  second_status=$?
  compared=$((compared + 1))
  [ $first_status -eq 0 ] || refused=$((refused + 1))
  if [ $first_status -ne $second_status ] || ! cmp -s "$folder/first" "$folder/second" ||
    ! cmp -s "$folder/first_errors" "$folder/second_errors"; then
    different=$((different + 1))
    echo "$*: differs (status $first_status and $second_status)"
    diff "$folder/first" "$folder/second" | head -n 6 | cut -c 1-200
    diff "$folder/first_errors" "$folder/second_errors" | head -n 4 | cut -c 1-200
  fi
}

all_views() { # a job, then further options
  for view in take passes heat boring day quote cautions; do
    same $view "$@"
    same $view "$@" --working
  done
  for view in take passes boring quote; do same $view "$@" --csv; done
  same take "$@" --json
  same take "$@" --units mm
  same take "$@" --units inch
  same sheet "$@"
  same sheet "$@" --units inch
  same check "$@"
}

if [ $# -gt 0 ]; then
  for job in "$@"; do all_views "$job"; done
else
  for job in "$root"/cli/demo/*.json "$here"/jobs/*.json; do all_views "$job"; done
  all_views "$root/cli/demo/dredger-pivots.json" --tables "$here/broken_family"
  same start
  same start --units inch
  same start --fields
  same check --schema
  "$first" materials | sed -E 's/^  ([a-z])/ @\1/; s/^ +([^@])/ \1/' | awk '
      /^[a-z_]+$/ { family = $0; next }
      / @/ { list = 0 }
      / @(base metals|fillers): / { list = 1; sub(/.*: /, "") }
      list { printf "%s ", $0 > "/dev/stderr"; all = all " " $0; held[family] = held[family] "," $0 }
      END { for (family in held) print family held[family] }' 2>/dev/null | sort >"$folder/names"
  while IFS=, read -ra names; do
    for name in "${names[@]:1}"; do same materials "${names[0]}/$(echo $name)"; done
  done <"$folder/names"
  for job in "$root"/tests/bad/*.json; do same check "$job"; done
fi
echo "$compared answers compared, $refused of them refusals, $different different"
[ $compared -gt 0 ] && [ $different -eq 0 ]
