"""The parts of the add-in that need no office: run with `python3 -m unittest`."""

import json
import math
import os
import stat
import struct
import sys
import tempfile
import time
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "..")
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.join(ROOT, "manifest", "libreoffice", "pythonpath"))

from ouncewise_calc import cells  # noqa: E402
from ouncewise_calc.bridge import REST_SECONDS, Bridge, CalculationUnavailable  # noqa: E402
from ouncewise_calc.find_node import NodeNotFound, find_node, usual_places  # noqa: E402
from ouncewise_calc.settings import Settings, read_settings, write_settings  # noqa: E402

# A stand-in for Node.js that behaves as its first request asks for.
STAND_IN = """#!%s
import json, os, sys, time
print(json.dumps({"ready": "stand-in"}), flush=True)
for line in sys.stdin:
    request = json.loads(line)
    what = request.get("f")
    if what == "HANG":
        time.sleep(1000)
    if what == "DIE":
        sys.exit(1)
    if what == "GIBBERISH":
        print("not json", flush=True)
        continue
    if what == "OTHER":
        request["n"] += 7
    print(json.dumps({"n": request["n"], "v": [request.get("a"), os.getpid()]}), flush=True)
""" % sys.executable


class Folder(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()

    def program(self, name, text):
        path = os.path.join(self.folder, name)
        os.makedirs(os.path.dirname(path), exist_ok=True)
        with open(path, "w") as file:
            file.write(text)
        os.chmod(path, stat.S_IRWXU)
        return path


class FindNode(Folder):
    def test_named_by_the_environment_comes_first(self):
        path, other = self.program("a/node", "x"), self.program("b/node", "x")
        self.assertEqual(find_node(Settings(node=other), {"OUNCEWISE_NODE": path, "PATH": ""}), path)

    def test_named_but_missing_is_said_and_nothing_else_is_taken(self):
        self.program("a/node", "x")
        environment = {"OUNCEWISE_NODE": "/nowhere", "PATH": os.path.join(self.folder, "a")}
        with self.assertRaisesRegex(NodeNotFound, "/nowhere, which the environment variable"):
            find_node(Settings(), environment)
        with self.assertRaisesRegex(NodeNotFound, "/elsewhere, which the Ouncewise settings"):
            find_node(Settings(node="/elsewhere"), {"PATH": os.path.join(self.folder, "a")})

    def test_path_is_searched(self):
        path = self.program("a/node", "x")
        self.assertEqual(find_node(Settings(), {"PATH": os.path.join(self.folder, "a")}), path)

    def test_newest_version_of_a_version_manager(self):
        self.program(".nvm/versions/node/v9.11.2/bin/node", "x")
        newest = self.program(".nvm/versions/node/v22.3.0/bin/node", "x")
        self.program(".nvm/versions/node/v20.9.0/bin/node", "x")
        managed = [p for p in usual_places({"HOME": self.folder}) if ".nvm" in p]
        self.assertEqual(managed[0], newest)
        self.assertEqual(len(managed), 3)

    def test_nowhere(self):
        import ouncewise_calc.find_node as module

        places = module.usual_places
        module.usual_places = lambda environment: [os.path.join(self.folder, "none")]
        try:
            with self.assertRaisesRegex(NodeNotFound, "Node.js was not found on this computer"):
                find_node(Settings(), {"PATH": ""})
        finally:
            module.usual_places = places


class SettingsFile(Folder):
    def test_round_trip(self):
        path = os.path.join(self.folder, "new", "settings.json")
        write_settings(path, Settings(node="/é/node", timeout_seconds=3))
        back = read_settings(path)
        self.assertEqual((back.node, back.timeout_seconds), ("/é/node", 3.0))
        self.assertEqual(os.listdir(os.path.dirname(path)), ["settings.json"])

    def test_damaged_or_odd_files_mean_the_defaults(self):
        path = os.path.join(self.folder, "settings.json")
        for text in ("{", "[]", '{"node": 3, "timeout_seconds": "x"}', '{"node": " ", "timeout_seconds": 0}'):
            with open(path, "w") as file:
                file.write(text)
            back = read_settings(path)
            self.assertEqual((back.node, back.timeout_seconds), (None, 20.0), text)
        self.assertEqual(read_settings(path + "none").timeout_seconds, 20.0)


class Calls(Folder):
    def setUp(self):
        super().setUp()
        self.now = 0.0
        self.node = self.program("node", STAND_IN)
        self.bridge = Bridge("server.cjs", lambda: Settings(self.node, 0.7), clock=lambda: self.now)

    def tearDown(self):
        self.bridge.restart()

    def test_unicode_numbers_and_blanks_arrive_unchanged(self):
        arguments = ["漢 ½ \U0001f9ca", 1.5, None, [[1.0, ""], ["é", -0.1]]]
        self.assertEqual(self.bridge.call("ECHO", arguments)[0], arguments)

    def test_large_requests_and_answers_do_not_block_each_other(self):
        column = [[float(i)] for i in range(100000)]
        self.bridge = Bridge("server.cjs", lambda: Settings(self.node, 30), clock=lambda: self.now)
        self.assertEqual(self.bridge.call("ECHO", [column])[0], [column])

    def test_one_process_for_many_calls(self):
        self.assertEqual(len({self.bridge.call("ECHO", [])[1] for _ in range(5)}), 1)

    def test_hang_is_ended_and_the_next_call_works(self):
        first = self.bridge.call("ECHO", [])[1]
        started = time.monotonic()
        with self.assertRaisesRegex(CalculationUnavailable, "longer than 0.7 seconds"):
            self.bridge.call("HANG", [])
        self.assertLess(time.monotonic() - started, 5)
        self.assertNotEqual(self.bridge.call("ECHO", [])[1], first)

    def test_two_failures_bring_a_rest_that_ends(self):
        for _ in range(2):
            with self.assertRaises(CalculationUnavailable):
                self.bridge.call("HANG", [])
        started = time.monotonic()
        for _ in range(1000):
            with self.assertRaisesRegex(CalculationUnavailable, "longer than"):
                self.bridge.call("ECHO", [])
        self.assertLess(time.monotonic() - started, 1)
        self.now += REST_SECONDS + 1
        self.assertEqual(self.bridge.call("ECHO", ["a"])[0], ["a"])

    def test_a_success_between_failures_forgets_them(self):
        for _ in range(3):
            with self.assertRaises(CalculationUnavailable):
                self.bridge.call("HANG", [])
            self.assertEqual(self.bridge.call("ECHO", [1.0])[0], [1.0])

    def test_killed_between_calls_is_not_noticed(self):
        process = self.bridge.call("ECHO", [])[1]
        os.kill(process, 9)
        self.assertEqual(self.bridge.call("ECHO", ["a"])[0], ["a"])

    def test_death_gibberish_and_foreign_answers_are_errors(self):
        for what in ("DIE", "GIBBERISH", "OTHER"):
            with self.assertRaises(CalculationUnavailable):
                self.bridge.call(what, [])
            self.assertEqual(self.bridge.call("ECHO", [])[0], [])

    def test_a_program_that_is_no_node_is_reported_with_its_last_words(self):
        self.node = self.program("old", "#!/bin/sh\necho 'SyntaxError: Unexpected token' >&2\n")
        with self.assertRaisesRegex(CalculationUnavailable, "Node.js 20 or newer. SyntaxError: Unexpected"):
            self.bridge.call("ECHO", [])

    def test_missing_node_is_looked_for_again_after_the_rest(self):
        here, self.node = self.node, "/nowhere"
        with self.assertRaisesRegex(CalculationUnavailable, "not at /nowhere"):
            self.bridge.call("ECHO", [])
        self.node = here
        with self.assertRaises(CalculationUnavailable):
            self.bridge.call("ECHO", [])
        self.now += REST_SECONDS + 1
        self.assertEqual(self.bridge.call("ECHO", [])[0], [])


class Cells(unittest.TestCase):
    def test_kinds(self):
        self.assertEqual(
            cells.rows_from_json([[1, True, "é"], [None, 2.5, False]]), ((1.0, 1.0, "é"), ("", 2.5, 0.0))
        )
        for cell in cells.rows_from_json([[1, True]])[0]:
            self.assertIs(type(cell), float)

    def test_error_is_a_nan_with_the_number_in_it(self):
        ((cell,),) = cells.rows_from_json({"e": 503})
        self.assertTrue(math.isnan(cell))
        self.assertEqual(struct.unpack("<Q", struct.pack("<d", cell))[0], 0x7FF8000000000000 + 503)

    def test_arguments(self):
        self.assertEqual(cells.to_json(((1.0, ""), ("a", 2.0))), [[1.0, ""], ["a", 2.0]])
        self.assertEqual(json.dumps([cells.to_json(None), cells.to_json("x")]), '[null, "x"]')


if __name__ == "__main__":
    unittest.main()
