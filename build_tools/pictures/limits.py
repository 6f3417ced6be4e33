"""How large pictures may be, so that whoever opens one sees it at once."""

from __future__ import annotations

MOST_POINTS = 12_600_000
"""Of a photograph, of all frames together: 4096 by 3072, what a telephone takes. Turned upright,
it stands twice in memory, at four bytes a point."""
MOST_SIDE = 20_000
"""Points along one side: a longer one makes a page of kilometres."""
MOST_PIECES = 10_000
"""Chunks or segments of one file: large photographs have some thousand."""
MOST_SCANS = 24
"""Times that a JPEG draws over itself: programs that save in steps take about ten."""

LEAST_FRAME = 334
"""Milliseconds that each frame of a moving picture stays, so that nothing flashes more than three
times a second (Web Content Accessibility Guidelines 2.2, 2.3.1)."""

MOST_PHOTOGRAPH = 300_000
"""Bytes of a photograph where it is published: it is made smaller until it has no more."""

MOST_RECORDING = 1_500_000
"""Bytes of a recording: two minutes in one channel, at 96 kilobits a second."""

MOST_DRAWING = 4_000_000
"""Bytes of a drawing, with the photographs in it."""
MOST_ELEMENTS = 5_000
MOST_LEVELS = 32
"""Elements in one another."""
MOST_STYLES = 20_000
"""Letters of all style sheets in a drawing."""
MOST_STYLED = 600_000
"""Letters of all styles that stand at a part itself."""
MOST_VALUE = 300
"""Letters of one value, where it is no path, no list of points and no photograph."""
MOST_PATH = 400_000
"""Letters of one path or list of points."""
MOST_SIZE = 1_000_000.0
"""The largest number that may be written, in whatever unit."""
MOST_FIGURES = 40
"""Letters of one number."""

MOST_USES = 100
"""How often parts may be shown again."""
MOST_SHAPES = 5_000
"""Shapes that are drawn, counted each time that one is shown again."""
MOST_AGAIN = 2_000
"""Shapes that stand elsewhere and are shown again: a browser makes each anew with all that holds
it, which takes several times as long as a shape that is written (4,096 took 1.1 s, of two)."""
MOST_CORNERS = 200_000
"""Points of all paths that are drawn, counted in the same way."""
MOST_LETTERS = 5_000
"""Letters of all texts that are drawn: accents on one letter take longer the more there are."""
MOST_LAYERS = 60
"""Masks, filters, clips and see-through groups that are drawn: each is a picture of its own."""
MOST_DASHES = 200_000
MOST_SHOWN_POINTS = 25_000_000
"""Points of photographs in a drawing, counted each time that one is shown again."""
