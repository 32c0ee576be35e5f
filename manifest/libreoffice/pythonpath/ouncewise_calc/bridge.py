"""One Node.js process for the whole office session, spoken to in lines of JSON."""

import json
import os
import subprocess
import sys
import tempfile
import threading
import time

from .find_node import NodeNotFound, find_node
from .watchdog import Watchdog

START_SECONDS = 20.0
# After two failures in a row every further cell would wait the full time again: a sheet of a thousand
# formulas would freeze the office for hours. So calls are refused at once for this long.
REST_SECONDS = 30.0
FAILURES_BEFORE_REST = 2


class CalculationUnavailable(Exception):
    """No answer: Node.js is missing, does not start, hangs or died."""


class Bridge:
    def __init__(self, server_path, read_settings, clock=time.monotonic):
        self._server_path = server_path
        self._read_settings = read_settings
        self._clock = clock
        self._lock = threading.Lock()
        self._watchdog = Watchdog()
        self._process = None
        self._errors = None
        self._timeout_seconds = START_SECONDS
        self._number = 0
        self._failures = 0
        self._rest_until = 0.0
        self._why = ""
        self.node_path = ""
        self.node_version = ""

    def call(self, function_id, arguments):
        """The answer's value: a cell or rows of cells, see `cells.py`."""
        return self.ask({"f": function_id, "a": arguments})

    def ask(self, request):
        with self._lock:
            if self._clock() < self._rest_until:
                raise CalculationUnavailable(self._why)
            try:
                answer = self._exchange(request)
            except NodeNotFound as missing:
                # Looking again for every cell would be slow; a new installation is found after the rest.
                self._fail(str(missing), failures=FAILURES_BEFORE_REST)
            self._failures = 0
            return answer

    def restart(self):
        """Ends the process and forgets failures, so that the next call starts with fresh settings."""
        with self._lock:
            self._end()
            self._failures = 0
            self._rest_until = 0.0

    def running(self):
        return self._process is not None and self._process.poll() is None

    def _exchange(self, request):
        self._number += 1
        line = json.dumps(dict(request, n=self._number)).encode("ascii") + b"\n"
        if not self.running():
            self._start()
            return self._send(line, may_retry=False)
        return self._send(line, may_retry=True)

    def _send(self, line, may_retry):
        answer = self._read_answer(line)
        if answer is None and may_retry:
            # The process had died since the last call; that is nobody's fault and worth one new start.
            self._end()
            self._start()
            answer = self._read_answer(line)
        if answer is None:
            self._end()
            self._fail("Node.js stopped during a calculation. It is started again by the next one.")
        if answer.get("n") != self._number:
            self._end()
            self._fail("Node.js gave an answer to another question and was ended.")
        return answer.get("v")

    def _read_answer(self, line):
        """None when the process died. @raises CalculationUnavailable when the time was up."""
        self._watchdog.watch(self._process, self._timeout_seconds)
        reply = b""
        try:
            self._process.stdin.write(line)
            self._process.stdin.flush()
            reply = self._process.stdout.readline()
        except OSError:
            pass
        finally:
            in_time = self._watchdog.release()
        if not in_time:
            self._end()
            self._fail(
                "A calculation took longer than %g seconds and was given up. A longer time can be set as "
                "timeout_seconds in the settings file." % self._timeout_seconds
            )
        return _parse(reply)

    def _start(self):
        settings = self._read_settings()
        self._timeout_seconds = settings.timeout_seconds
        self.node_path = find_node(settings)
        environment = dict(os.environ)
        # Meant for other programs; a debugger option would make ours wait for a debugger.
        environment.pop("NODE_OPTIONS", None)
        hidden = {"creationflags": subprocess.CREATE_NO_WINDOW} if sys.platform == "win32" else {}
        self._errors = tempfile.TemporaryFile()
        try:
            self._process = subprocess.Popen(
                [self.node_path, self._server_path],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=self._errors,
                env=environment,
                **hidden
            )
        except OSError as error:
            self._fail("Node.js at %s could not be started: %s" % (self.node_path, error))
        self._greet()

    def _greet(self):
        self._watchdog.watch(self._process, START_SECONDS)
        greeting = self._process.stdout.readline()
        in_time = self._watchdog.release()
        hello = _parse(greeting)
        if hello is None or "ready" not in hello:
            said = self._last_words()
            self._end()
            reason = "did not answer" if not in_time else "stopped at once"
            self._fail(
                "Node.js at %s was started but %s. Ouncewise needs Node.js 20 or newer. %s"
                % (self.node_path, reason, said)
            )
        self.node_version = str(hello["ready"])

    def _last_words(self):
        try:
            self._errors.seek(0)
            return self._errors.read(2000).decode("utf-8", "replace").strip()
        except (OSError, ValueError):
            return ""

    def _end(self):
        process, self._process = self._process, None
        if self._errors is not None:
            self._errors.close()
            self._errors = None
        if process is None:
            return
        process.kill()
        for pipe in (process.stdin, process.stdout):
            try:
                pipe.close()
            except OSError:
                pass
        process.wait()

    def _fail(self, why, failures=1):
        self._why = why
        self._failures += failures
        if self._failures >= FAILURES_BEFORE_REST:
            self._rest_until = self._clock() + REST_SECONDS
        raise CalculationUnavailable(why)


def _parse(line):
    try:
        answer = json.loads(line.decode("utf-8"))
    except ValueError:
        return None
    return answer if isinstance(answer, dict) else None
