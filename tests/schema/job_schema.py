"""The schema that the program prints, held against the jobs that the program reads.

Arguments: the program, the folder of the sample jobs, the folder of the broken ones.
"""
import re
import subprocess
import sys
import unittest
from pathlib import Path

from jsonschema import Draft202012Validator

from not_of_the_schema import NO_JSON, REASONS
from plain_json import plain, read

PROGRAM, SAMPLES, BAD = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])


def printed(*words):
    return subprocess.run([PROGRAM, *words], check=True, capture_output=True, text=True).stdout


SCHEMA = read(printed("check", "--schema"))
JUDGE = Draft202012Validator(SCHEMA)
SAMPLE = (SAMPLES / "dredger-pivots.json").read_text()


def path_of(error):
    """Where an error stands, as the program writes it: bores[0].worn."""
    path = ""
    for step in error.absolute_path:
        path += f"[{step}]" if isinstance(step, int) else f"{'.' if path else ''}{step}"
    return path


def refused_paths(job):
    return [path_of(error) for error in JUDGE.iter_errors(job)]


def told_paths(stem):
    """The paths of the faults that the program tells."""
    return re.findall(rf"^{re.escape(stem)}\.json:\d+:\d+: ([\w.\[\]]+): ", (BAD / f"{stem}.txt").read_text(), re.M)


def placed_alike(refused, told):
    """Whether an error stands where a fault does, or at the object that holds or lacks it."""
    return any(t == r or t.rpartition(".")[0] == r or t.startswith(f"{r}[") for r in refused for t in told) or ("" in refused and not told)


class JobSchema(unittest.TestCase):
    maxDiff = None

    def test_it_is_a_schema(self):
        Draft202012Validator.check_schema(SCHEMA)
        self.assertEqual(SCHEMA["$schema"], "https://json-schema.org/draft/2020-12/schema")

    def test_its_patterns_are_ascii_and_anchored(self):
        for name, one in SCHEMA["$defs"].items():
            with self.subTest(name):
                self.assertTrue(one["pattern"].isascii())
                self.assertTrue(one["pattern"].startswith("^") and one["pattern"].endswith("$"))

    def test_every_sample_and_the_starter_are_accepted(self):
        samples = sorted(SAMPLES.glob("*.json"))
        self.assertGreaterEqual(len(samples), 6)
        texts = {one.name: one.read_text() for one in samples}
        texts["starter"] = printed("start")
        texts["starter in inches"] = printed("start", "--units", "inch")
        for name, text in texts.items():
            with self.subTest(name):
                self.assertEqual(refused_paths(read(text)), [])

    def test_every_sample_of_a_field_and_every_value_assumed_fit_their_field(self):
        def fields(schema, path):
            for name, field in schema.get("properties", {}).items():
                yield f"{path}.{name}", field
                for inner in (field, field.get("items", {}), field.get("additionalProperties", {})):
                    if isinstance(inner, dict):
                        yield from fields(inner, f"{path}.{name}")

        found = dict(fields(SCHEMA, ""))
        self.assertGreater(len(found), 80)
        for path, field in found.items():
            with self.subTest(path):
                judge = JUDGE.evolve(schema={**field, "$defs": SCHEMA["$defs"]})
                for value in field.get("examples", []) + ([field["default"]] if "default" in field else []):
                    self.assertEqual([error.message for error in judge.iter_errors(value)], [])

    def test_every_broken_job_is_refused_unless_it_is_no_matter_of_a_schema(self):
        stems = {one.stem for one in BAD.glob("*.json")}
        self.assertLess(set(REASONS) | NO_JSON, stems)
        self.assertEqual(set(REASONS) & NO_JSON, set())
        for stem in sorted(stems):
            with self.subTest(stem):
                if stem in NO_JSON:
                    self.assertRaises(ValueError, lambda: read((BAD / f"{stem}.json").read_bytes().decode()))
                    continue
                text = (BAD / f"{stem}.json").read_bytes().decode()
                if stem in REASONS:
                    self.assertEqual(refused_paths(read(text)), [], "it can be refused: take it off the list")
                else:
                    refused = refused_paths(read(text))
                    self.assertTrue(placed_alike(refused, told_paths(stem)), f"{refused} for {told_paths(stem)}")

    def test_every_field_must_be_known_everywhere(self):
        def closed(value, schema):
            """The objects of a job whose fields are the format's, not names of the user's choosing."""
            if "properties" in schema:
                yield value
                for name, inner in value.items():
                    yield from closed(inner, schema["properties"][name])
            elif isinstance(value, dict):
                for inner in value.values():
                    yield from closed(inner, schema["additionalProperties"])
            elif isinstance(value, list):
                for inner in value:
                    yield from closed(inner, schema["items"])

        job = read((SAMPLES / "every-field.json").read_text())
        found = list(closed(job, SCHEMA))
        self.assertGreater(len(found), 15)
        for one in found:
            one["unheard_of"] = 1
            self.assertEqual(len(refused_paths(job)), 1)
            del one["unheard_of"]
        self.assertEqual(refused_paths(job), [])

    def test_each_field_left_out_that_must_not_be_is_missed(self):
        for name in SCHEMA["required"]:
            job = read(SAMPLE)
            del job[name]
            self.assertEqual(refused_paths(job), [""])

    def test_comments_and_commas_are_taken_out_and_texts_are_not(self):
        self.assertEqual(read('{ // one\n "a": "// \\" /* no */ ,]", /* two\n */ "b": [1, 2, // three\n ], }'),
                         {"a": '// " /* no */ ,]', "b": [1, 2]})
        self.assertEqual(plain('"a,]"'), '"a,]"')


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
