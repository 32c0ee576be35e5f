"""The settings file in the user profile of the office."""

import json
import os

DEFAULT_TIMEOUT_SECONDS = 20.0


class Settings:
    """Where Node.js is (None: look for it) and how long one call may take."""

    def __init__(self, node=None, timeout_seconds=DEFAULT_TIMEOUT_SECONDS):
        self.node = node
        self.timeout_seconds = timeout_seconds


def read_settings(path):
    """Settings as far as the file has usable ones; a missing or damaged file means the defaults."""
    try:
        with open(path, encoding="utf-8") as file:
            found = json.load(file)
    except (OSError, ValueError):
        return Settings()
    if not isinstance(found, dict):
        return Settings()
    node = found.get("node")
    seconds = found.get("timeout_seconds")
    usable = isinstance(seconds, (int, float)) and not isinstance(seconds, bool) and seconds > 0
    return Settings(
        node=node if isinstance(node, str) and node.strip() else None,
        timeout_seconds=float(seconds) if usable else DEFAULT_TIMEOUT_SECONDS,
    )


def write_settings(path, settings):
    """Writes to a second file first, so that a full disk cannot leave half a file."""
    os.makedirs(os.path.dirname(path), exist_ok=True)
    draft = path + ".new"
    with open(draft, "w", encoding="utf-8") as file:
        json.dump({"node": settings.node, "timeout_seconds": settings.timeout_seconds}, file, indent=2)
        file.write("\n")
    os.replace(draft, path)
