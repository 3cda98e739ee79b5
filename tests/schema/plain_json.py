"""A job file as plain JSON: comments and trailing commas, which a job may have, taken out."""
import json
import re

# A text is taken whole, so that what looks like a comment or a comma in it stays.
COMMENT = re.compile(r'"(?:[^"\\\n]|\\.)*"|//[^\n]*|/\*.*?\*/', re.S)
LAST_COMMA = re.compile(r'"(?:[^"\\\n]|\\.)*"|,(?=\s*[}\]])')


def plain(text):
    for what in (COMMENT, LAST_COMMA):
        text = what.sub(lambda found: found[0] if found[0].startswith('"') else " ", text)
    return text


def read(text):
    """The value of a job's text; ValueError where it is no JSON or has a name twice."""

    def without_doubles(members):
        if len(dict(members)) < len(members):
            raise ValueError("a name stands twice")
        return dict(members)

    return json.loads(plain(text), object_pairs_hook=without_doubles)
