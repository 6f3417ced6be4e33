"""How much of a word-processor file is read: far more than lessons need, less than does harm."""

from __future__ import annotations

MOST_FILE = 40_000_000
"""Bytes of the file itself; most of them are pictures, which are not read."""
MOST_ENTRIES = 2_000
"""Files in it; a file of lessons has about twenty, and one for each picture."""
MOST_PART = 8_000_000
"""Bytes of one part that is read, unpacked: the text of some five hundred pages."""
MOST_WHOLE = 16_000_000
"""Bytes of all parts that are read, unpacked."""
MOST_ELEMENTS = 150_000
"""Elements that are kept of all parts; a lesson's file has about three thousand."""
MOST_LEVELS = 100
"""Elements in one another; tables in tables in boxes reach thirty."""
