"""Words that are spoken on the counts are as many as the counts said of them.

"Twelve counts: inside, two, go, two, three …" and there are ten words: who calls them has the ring
home two counts before the tune. Read are patterns of one word a count, with commas between, after
the number of their counts.

Bad:
    notes: "It is eight counts, “In, two, go, two, three, home.”"
Good:
    notes: "It is eight counts, “In, two, go, two, three, four, home, two.”"
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.spoken_counts import spoken_counts
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first pattern of each text that has other counts than is said."""
    text = unit_text(unit)
    for file, field in text.at(text.holding(("counts",))):
        for one in spoken_counts(field.text):
            if one.counts == one.words or one.counts % one.words == 0:
                continue
            yield Finding(
                file,
                place_of(field, one.said),
                f"`{field.kind}` says {one.counts} counts, and the words after it take "
                f"{one.words}, one a count",
                "write a word or a number for each count, or mend the number of counts",
            )
            break
