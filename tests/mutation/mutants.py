"""Finds every arithmetic operator and every numeric literal of a C++ source, and what to put in its place.

It reads tokens, not C++: what an asterisk means is told by the spaces that clang-format leaves round it."""

import re
from dataclasses import dataclass

TOKENS = re.compile(r"""
    (?P<space> \s+ )
  | (?P<skip> //[^\n]* | /\*.*?\*/ | ^\#(?:\\\n|[^\n])* )
  | (?P<text> (?:u8|[uUL])?R"(?P<mark>[^()\s]*)\(.*?\)(?P=mark)" | (?:u8|[uUL])?"(?:\\.|[^"\\\n])*" )
  | (?P<number> (?<![\w.]) \.?[0-9] (?: [eE][+-] | '(?=\w) | [\w.] )* )
  | (?P<char> (?:u8|[uUL])?'(?:\\.|[^'\\\n])+' )
  | (?P<word> [A-Za-z_]\w* )
  | (?P<sign> <=> | <<= | >>= | ->\* | \.\.\. | -> | \+\+ | -- | [-+*/%&|^=!<>]= | && | \|\| | << | :: | \.\* | . )
""", re.VERBOSE | re.DOTALL | re.MULTILINE)

SWAPPED = {"+": "-", "-": "+", "*": "/", "/": "*", "+=": "-=", "-=": "+=", "*=": "/=", "/=": "*=", "++": "--", "--": "++"}
ENDS_A_VALUE = re.compile(r"[\w)\]\"'}]$")
OPENS_A_VALUE = {"return", "case", "co_return", "co_yield", "throw"}


@dataclass
class Token:
    kind: str
    text: str
    start: int
    spaced_before: bool = False
    spaced_after: bool = False


@dataclass
class Mutant:
    file: str    # below lib/ringfill
    line: int    # from 1
    code: str    # the line, without the space round it
    which: int   # the how-manyth mutant of that text in the file, from 0
    old: str
    new: str
    start: int   # in the text of the file

    @property
    def key(self):
        """Holds when lines move."""
        return f"{self.file} | {self.code} | {self.old} -> {self.new} | {self.which}"

    def applied(self, text):
        return text[:self.start] + self.new + text[self.start + len(self.old):]


def tokens(text):
    found, spaced = [], True
    for match in TOKENS.finditer(text):
        kind = match.lastgroup if match.lastgroup != "mark" else "text"
        if kind in ("space", "skip"):
            spaced = True
            if found:
                found[-1].spaced_after = True
        else:
            found.append(Token(kind, match.group(), match.start(), spaced))
            spaced = False
    return found


def in_angles(all_tokens):
    """The indices of what stands between the angle brackets of templates: clang-format sets no space before them,
    and round a comparison it does."""
    inside, open_at = set(), []
    for i, token in enumerate(all_tokens):
        before = all_tokens[i - 1] if i else None
        if token.text == "<" and before and (before.text == "template" or before.kind == "word" and not token.spaced_before):
            open_at.append(i)
        elif token.text == ">" and open_at and not (token.spaced_before and token.spaced_after):
            inside.update(range(open_at.pop(), i))
        elif token.text in ";{" and open_at and token.kind == "sign":
            open_at.clear()
    return inside


def in_for_heads(all_tokens):
    """The indices of what stands after the last semicolon of a loop's head: there ++ steps, it does not count."""
    inside = set()
    for i, token in enumerate(all_tokens):
        if token.text != "for":
            continue
        depth, semicolons = 0, 0
        for j in range(i + 1, len(all_tokens)):
            text = all_tokens[j].text
            depth += {"(": 1, ")": -1}.get(text, 0)
            semicolons += text == ";"
            if semicolons == 2:
                inside.add(j)
            if depth == 0:
                break
    return inside


def other_number(literal):
    """A whole number becomes the next, any other a tenth more; a small one, as roundings are, a million times as large."""
    digits = re.match(r"0[xX][0-9a-fA-F']+|[0-9.'eE+-]+", literal).group()
    suffix = literal[len(digits):]
    plain = digits.replace("'", "")
    if re.fullmatch(r"0[xX].*|[0-9]+", plain):
        return str(int(plain, 0 if plain[1:2] in ("x", "X") else 10) + 1) + suffix
    value = float(plain)
    value = 1.0 if value == 0 else value * 1e6 if value <= 1e-6 else value * 1.1
    return repr(value) + suffix


def swapped(before, token, after, stepping):
    """What to put in the place of an operator, or nothing if it is none of arithmetic."""
    sign = token.text
    if sign not in SWAPPED or before is None or before.text == "operator":
        return None
    if sign in ("++", "--"):
        return None if stepping else SWAPPED[sign]
    if "text" in (before.kind, after.kind) and sign in ("+", "+="):  # text is joined, not added
        return None
    if sign.endswith("="):
        return SWAPPED[sign]
    follows_value = ENDS_A_VALUE.search(before.text) and before.text not in OPENS_A_VALUE
    if follows_value:
        return SWAPPED[sign] if token.spaced_before and token.spaced_after else None
    return "" if sign == "-" else None  # of one side


def find_mutants(file, text):
    all_tokens = tokens(text)
    angles, steps = in_angles(all_tokens), in_for_heads(all_tokens)
    lines = text.split("\n")
    seen, mutants = {}, []
    for i, token in enumerate(all_tokens):
        before = all_tokens[i - 1] if i else None
        after = all_tokens[i + 1] if i + 1 < len(all_tokens) else token
        new = None
        if i in angles:
            continue
        if token.kind == "sign":
            new = swapped(before, token, after, i in steps)
        elif token.kind == "number" and not is_pure(all_tokens, i):
            new = other_number(token.text)
        if new is None:
            continue
        line = text.count("\n", 0, token.start)
        code = lines[line].strip()
        which = seen.setdefault((code, token.text), -1) + 1
        seen[code, token.text] = which
        mutants.append(Mutant(file, line + 1, code, which, token.text, new, token.start))
    return mutants


def is_pure(all_tokens, i):
    """`= 0;` after the head of a function."""
    if i < 2 or all_tokens[i].text != "0" or all_tokens[i - 1].text != "=":
        return False
    return all_tokens[i - 2].text in (")", "const", "noexcept", "override")
