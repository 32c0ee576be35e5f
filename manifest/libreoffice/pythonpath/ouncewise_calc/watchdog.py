"""Ends a process that does not answer in time.

Reading from a pipe cannot be given a time limit on every system. So the call reads plainly, and this thread kills the
process when the time is up: the read then ends by itself. One sleeping thread for all calls costs next to nothing.
"""

import threading
import time


class Watchdog:
    def __init__(self):
        self._lock = threading.Lock()
        self._armed = threading.Event()
        self._process = None
        self._due = None
        self._thread = None

    def watch(self, process, seconds):
        with self._lock:
            self._process = process
            self._due = time.monotonic() + seconds
        if not self._armed.is_set():
            self._armed.set()
        if self._thread is None:
            self._thread = threading.Thread(target=self._run, name="ouncewise-watchdog", daemon=True)
            self._thread.start()

    def release(self):
        """True when the process was left alone, False when its time was up and it was killed."""
        with self._lock:
            in_time = self._process is not None
            self._process = None
            self._due = None
        return in_time

    def _run(self):
        while True:
            self._armed.wait()
            with self._lock:
                if self._due is None:
                    self._armed.clear()
                    continue
                left = self._due - time.monotonic()
                if left <= 0:
                    self._process.kill()
                    self._process = None
                    self._due = None
                    continue
            time.sleep(min(left, 0.2))
