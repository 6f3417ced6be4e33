"""The faults of a file's shape, explained: what `explain` prints for them."""

from __future__ import annotations

SHAPE_FAULTS: dict[str, str] = {
    "unknown-field": "Every field is one that is read.\n\nA field with a slip in its name would "
    "be lost without a word, and so would what you wrote in it.\n\nBad:  looks_for: soft knees\n"
    "Good: look_for: soft knees",
    "missing-field": "Every field a teacher relies on is there.",
    "wrong-value": "Every field holds the kind of thing it is for: numbers where numbers are "
    "meant, words from the list where there is a list.",
}
