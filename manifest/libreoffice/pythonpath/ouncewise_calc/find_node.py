"""Where is Node.js? Programs started from a desktop menu often see a shorter PATH than a terminal does."""

import glob
import os
import re
import shutil
import sys


class NodeNotFound(Exception):
    """The text says where was looked and what the user can do."""


def find_node(settings, environment=None):
    """Path of the Node.js program.

    The environment variable OUNCEWISE_NODE comes first, then the settings file. Whoever names a program wants that one:
    if it is not there, that is said, and no other is taken. Without either, PATH and the usual places are searched.
    """
    environment = os.environ if environment is None else environment
    named = environment.get("OUNCEWISE_NODE", "").strip()
    if named:
        return _must_run(named, "the environment variable OUNCEWISE_NODE")
    if settings.node:
        return _must_run(settings.node, "the Ouncewise settings")
    on_path = shutil.which("node", path=environment.get("PATH")) or shutil.which(
        "nodejs", path=environment.get("PATH")
    )
    if on_path:
        return on_path
    for candidate in usual_places(environment):
        if _runs(candidate):
            return candidate
    raise NodeNotFound(
        "Node.js was not found on this computer. Ouncewise needs Node.js 20 or newer. Install it, or choose the program "
        "under Tools > Add-Ons > Ouncewise: choose the Node.js program."
    )


def usual_places(environment):
    """Where installers and version managers put it, newest version first."""
    if sys.platform == "win32":
        return _windows_places(environment)
    home = environment.get("HOME") or os.path.expanduser("~")
    managed = []
    for pattern in (
        ".nvm/versions/node/*/bin/node",
        ".local/share/fnm/node-versions/*/installation/bin/node",
        ".asdf/installs/nodejs/*/bin/node",
        ".local/share/mise/installs/node/*/bin/node",
    ):
        managed.extend(_newest_first(glob.glob(os.path.join(home, pattern))))
    return [
        "/usr/local/bin/node",
        "/opt/homebrew/bin/node",
        "/opt/local/bin/node",
        "/usr/bin/node",
        "/usr/bin/nodejs",
        "/snap/bin/node",
        os.path.join(home, ".volta/bin/node"),
        os.path.join(home, ".local/bin/node"),
    ] + managed


def _windows_places(environment):
    places = []
    for variable, rest in (
        ("ProgramFiles", r"nodejs\node.exe"),
        ("ProgramFiles(x86)", r"nodejs\node.exe"),
        ("LOCALAPPDATA", r"Programs\nodejs\node.exe"),
        ("NVM_SYMLINK", "node.exe"),
        ("LOCALAPPDATA", r"Volta\bin\node.exe"),
    ):
        folder = environment.get(variable)
        if folder:
            places.append(os.path.join(folder, rest))
    roaming = environment.get("APPDATA")
    if roaming:
        places.extend(_newest_first(glob.glob(os.path.join(roaming, r"nvm\v*\node.exe"))))
    return places


def _newest_first(paths):
    return sorted(paths, key=lambda path: [int(digits) for digits in re.findall(r"\d+", path)], reverse=True)


def _runs(path):
    return os.path.isfile(path) and os.access(path, os.X_OK)


def _must_run(path, named_by):
    if _runs(path):
        return path
    raise NodeNotFound("Node.js is not at " + path + ", which " + named_by + " names. Correct the path or remove it.")
