"""The schema of the result, held against the results that the program prints.

Arguments: the program, the program that prints random jobs, the sample jobs.
"""
import json
import re
import subprocess
import sys
import unittest
from pathlib import Path

from jsonschema import Draft202012Validator

from plain_json import read

PROGRAM, RANDOM_JOBS, SAMPLES = sys.argv[1], sys.argv[2], sys.argv[3:]
VIEWS = ["take", "passes", "heat", "boring", "day", "quote", "cautions"]
RANDOM, AT_THE_EDGES = 500, 1900


def printed(*words):
    return subprocess.run([PROGRAM, *words], check=True, capture_output=True, text=True).stdout


def content_of(sample):
    return Path(sample).read_text()


def plan_of(sample, *words, view="take"):
    return json.loads(printed(view, sample, "--json", *words))


SCHEMA = json.loads(printed("check", "--schema", "result"))
JUDGE = Draft202012Validator(SCHEMA)


def faults(result):
    return [f"{error.json_path}: {error.message:.200}" for error in JUDGE.iter_errors(result)]


def places(value, schema):
    """Each member of a result with the object it stands in and what the schema says of that object."""
    if isinstance(value, list):
        for one in value:
            yield from places(one, schema.get("items", {}))
    elif isinstance(value, dict):
        named = schema.get("properties", {})
        for name, inner in value.items():
            yield value, name, schema
            yield from places(inner, named[name] if name in named else schema["additionalProperties"])


def schemas(schema):
    """Every schema within one, itself included."""
    yield schema
    for inner in schema.values():
        if isinstance(inner, dict):
            yield from schemas(inner)


class ResultSchema(unittest.TestCase):
    maxDiff = None

    def test_it_is_a_schema(self):
        Draft202012Validator.check_schema(SCHEMA)
        self.assertEqual(SCHEMA["$schema"], "https://json-schema.org/draft/2020-12/schema")
        self.assertEqual(SCHEMA["properties"]["format"], {"const": SCHEMA["title"]})

    def test_it_leaves_no_object_open(self):
        objects = [one for one in schemas(SCHEMA) if one.get("type") == "object"]
        self.assertGreater(len(objects), 30)
        for one in objects:
            if "properties" in one:
                self.assertIs(one["additionalProperties"], False)
                self.assertLessEqual(set(one["required"]), set(one["properties"]))
            else:
                self.assertIsInstance(one["additionalProperties"], dict)  # names that a job, a family or a table gives

    def test_a_unit_at_the_end_of_a_key_is_told(self):
        bead = SCHEMA["properties"]["bores"]["items"]["properties"]["bead"]["properties"]
        self.assertEqual(bead["travel_mm_min"], {"type": "number", "description": "in mm/min"})
        self.assertEqual(bead["scale"], {"type": "number"})

    def test_the_words_of_an_enumeration_are_listed(self):
        caution = SCHEMA["properties"]["cautions"]["items"]["properties"]
        self.assertEqual(caution["when"], {"enum": ["before", "during", "after"]})

    def test_every_sample_fits_in_every_view_and_unit(self):
        self.assertGreaterEqual(len(SAMPLES), 6)
        for sample in SAMPLES:
            for words in ([], ["--units", "mm"], ["--units", "inch"]):
                with self.subTest(sample, words=words):
                    self.assertEqual(faults(plan_of(sample, *words)), [])
            for view in VIEWS:
                self.assertEqual(plan_of(sample, view=view), plan_of(sample), view)

    def test_a_result_with_a_member_changed_does_not_fit(self):
        """Each member once, wherever it stands: a strange one beside it, one of another kind, and none."""
        result = plan_of(next(sample for sample in SAMPLES if sample.endswith("every-field.json")))
        self.assertEqual(faults(result), [])
        met = set()
        for object_, name, schema in list(places(result, SCHEMA)):
            if (id(schema), name) in met or (met.add((id(schema), name)) or "properties" not in schema):
                continue
            kept = dict(object_)
            judge = JUDGE.evolve(schema=schema)
            with self.subTest(name, among=list(kept)):
                self.assertTrue(judge.is_valid(kept))
                self.assertFalse(judge.is_valid({**kept, "unheard_of": 1}))
                self.assertFalse(judge.is_valid({**kept, name: None}))
                self.assertFalse(judge.is_valid({**kept, name: 1 if isinstance(kept[name], str) else "1"}))
                del kept[name]
                self.assertEqual(judge.is_valid(kept), name not in schema["required"])
        self.assertGreater(len(met), 200)

    def test_random_plans_fit(self):
        """Plans of random jobs and of such at the edges, of most fillers."""
        jobs = subprocess.run([RANDOM_JOBS, str(RANDOM), str(AT_THE_EDGES), *SAMPLES], check=True, capture_output=True).stdout
        self.assertGreater(len(jobs.splitlines()), RANDOM + AT_THE_EDGES - 10)  # but for those longer than a job may be
        batch = subprocess.run([PROGRAM, "batch", "-"], input=jobs, capture_output=True)
        self.assertIn(batch.returncode, (0, 1), batch.stderr)
        results = [json.loads(line) for line in batch.stdout.splitlines()]
        self.assertEqual(len(results), len(jobs.splitlines()))
        plans = [one for one in results if one["format"] == SCHEMA["title"]]
        self.assertGreaterEqual(len(plans), 1000)
        for plan in plans:
            self.assertEqual(faults(plan), [], plan["title"])
        fillers = {bore["suits"]["filler"] for plan in plans for bore in plan["bores"]}
        self.assertGreater(len(fillers), 50)

    def test_every_base_metal_fits(self):
        job = read(next(text for text in map(content_of, SAMPLES) if '"diameter"' in text))
        bases = [f"{family}/{' '.join(name.split())}"
                 for family, told in re.findall(r"^(\w+)\n((?:  .*\n)+)", printed("materials"), re.M)
                 for names in re.findall(r"^  base metals: ((?:.|\n  (?!fillers:))+)", told, re.M)
                 for name in re.split(r",\s+", names)]
        self.assertGreater(len(bases), 50)
        jobs = []
        for base in bases:
            for bore in job["bores"]:
                bore["base"] = base
            jobs.append(json.dumps(job))
        batch = subprocess.run([PROGRAM, "batch", "-"], input="\n".join(jobs), capture_output=True, text=True)
        results = [json.loads(line) for line in batch.stdout.splitlines()]
        self.assertEqual({one["bores"][0]["suits"]["base"] for one in results if "bores" in one}, set(bases))
        for result in results:
            self.assertEqual(faults(result), [])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
