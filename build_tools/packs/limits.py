"""How much a pack may hold: far more than any unit needs, and less than hurts a small computer."""

from __future__ import annotations

MOST_PACK = 40_000_000
"""Bytes of the file itself: what a mail or a stick still carries."""
MOST_WHOLE = 60_000_000
"""Bytes of all its files together, unpacked."""
MOST_FILE = 20_000_000
"""Bytes of one file, unpacked."""
MOST_FILES = 400
"""Files and folders in it: a unit of eight lessons has about forty."""
MOST_PICTURES = 15_000_000
"""Bytes of all pictures of its unit: the unit's page in a pack holds them all once more."""
MOST_TIMES = 50
"""How many times larger a file may get when it is unpacked; text gets about five times."""
MOST_LIST = 300_000
"""Bytes of a list of files: so many files of the longest paths need no more."""
MOST_ABOUT = 262_144
"""Bytes of what a pack says of itself: as much as a lesson may have."""
MOST_NOTED = 100
"""Bytes of what a zip notes of a file beside its name, such as times to the second."""
MOST_PATH = 160
"""Letters of a path, so that it still fits below a folder where paths end at 260."""
MOST_NAME = 80
"""Letters of one name in a path."""
MOST_NAME_BYTES = 255
"""Bytes of one name, written as UTF-8: more no file system of Linux or macOS holds."""
MOST_DEPTH = 6
"""Folders in folders."""
