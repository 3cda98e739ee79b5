"""The finder of mutants on a small text: every operator and number of the computation, and nothing else."""

import re
import sys
from pathlib import Path

from mutants import find_mutants
from run import ROOMS

TEXT = r'''
#include <ringfill/weld/ferrite.hpp> // 1 + 2
#define nothing 3 + \
    4
/* 5 * 6
   7 */
// 8 - 9
template <int n = 2> struct Ring { virtual int size() const = 0; };
using Six = std::array<double, 6>;
Ring<3>* next(const Ring<3>& ring, std::vector<Ring<4>>&& rest);
double Ring::*figure = &Ring::width;
Length operator+(Length a, Length b);
const char* said = "10 - 11 * {:.2f}", *raw = R"(12 + 13)", sign = '-', one = '1';
std::string joined = said + "1 / 2" + '\'';
double area(double r, int layers) {
    int count = 0;
    for (int i = 1; i < layers; ++i)
        count += 2;
    ++count;
    *where = -r * 0.75 + 1'000 / 2e-3;
    return count > 0 && r < 1e-9 ? r - .5 : 4.0f;
}
'''

EXPECTED = [
    "0 -> 1", "1 -> 2", "+= -> -=", "2 -> 3", "++ -> --",
    "- -> ", "* -> /", "0.75 -> 0.825", "+ -> -", "1'000 -> 1001", "/ -> *", "2e-3 -> 0.0022",
    "0 -> 1", "1e-9 -> 0.001", "- -> +", ".5 -> 0.55", "4.0f -> 4.4f",
]


def rounded(mutant):
    new = re.sub(r"\d+\.\d{6,}", lambda number: f"{float(number.group()):.6g}", mutant.new)
    return f"{mutant.old} -> {new}"


def check(what, found, expected):
    if found != expected:
        sys.exit(f"{what}:\n  found    {found}\n  expected {expected}")


found = find_mutants("small.cpp", TEXT)
check("mutants of the small text", [rounded(one) for one in found], EXPECTED)

# A key names one mutant and stays when the line moves.
check("keys", len({one.key for one in found}), len(found))
check("keys of moved lines", [one.key for one in find_mutants("small.cpp", "\n// moved\n" + TEXT)], [one.key for one in found])
first_of_two, second_of_two = find_mutants("small.cpp", "return a * b * c;")
check("the same sign twice", (first_of_two.which, second_of_two.which), (0, 1))
check("a mutant in its place", second_of_two.applied("return a * b * c;"), "return a * b / c;")

# Against a plain search of the computation, which clang-format lays out: every sign with a space on either side, but a
# plus that joins text.
for path in sorted(path for room in ROOMS for path in (Path(sys.argv[1]) / room).glob("*pp")):
    text = path.read_text()
    plain = re.sub(r'"(?:\\.|[^"\\\n])*"|//[^\n]*', lambda part: '""' if part.group()[0] == '"' else "", text)
    searched = re.findall(r'(?<=\S)\s+[-*/]\s+(?=\S)|(?<=[^\s"])\s+\+\s+(?=[^\s"])', plain)
    signs = [one for one in find_mutants(path.name, text) if one.old in list("+-*/") and one.new]
    check(str(path), len(signs), len(searched))
