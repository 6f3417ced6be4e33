"""Writes sensible words in every open place of a draft, as an author would: a kite in the wind."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from build_tools.drafting.draft import page
from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter import Document, read_markdown
from build_tools.views.words.open_places import MARK, hint_in

TITLE = "The runaway kite"
STIMULUS = "A kite on a windy hill, and a short film of kites in the air"

_WORDS = {
    "a school subject it links to": "Science",
    "what the dance will be, in one sentence": "A kite waits, pulls at its string and flies.",
    "what you show or do with the stimulus, step by step": "Hold up the kite, then play the film.",
    "the one thing pupils look or listen for in the stimulus": "What the kite does.",
    "what in it could upset a pupil and what you do": "Nothing is likely to. Stand well back.",
    "what every pupil shows of the idea by the end": "shows the kite held and the kite free",
    "what you see when the idea is there": "A watcher can tell the tight string from the open sky.",
    "what you see of the idea on the way": "The held shapes are clear.",
    "what you see of the idea beyond that": "The wind can be seen to rise and drop in the dancing.",
    "what pupils have done before": "Moving in a shared space and keeping a beat of eight.",
    "what pupils can go on to after this unit": "Longer motifs, and changing two things at once.",
    "how the dance ends, in three counts or three breaths": "Fold down. Be still, three breaths.",
    "travel in a word": "drift",
    "turn in a word": "spiral",
    "lean in a word": "tug",
    "gesture in a word": "flutter",
    "stillness in a word": "hang",
    "one shape to choose": "wide like a sail",
    "a second shape to choose": "thin like a string",
    "the shape that you give": "Wide like a sail.",
    "a third order to choose": "The stillness first",
    "one move to change": "the first move",
    "a second move to change": "the third move",
    "the change that you give": "The third move is low.",
    "another answer pupils may give": "we hang still at the end",
    "how pupils may say the dance has grown": "it flows, and we wait for each other",
}  # fmt: skip
_PATTERNS = (
    (r"what part (\w) is about, in a line", "Part {0} of the flight. The kite meets the wind."),
    (r"what (.+) stands for", "A kite that pulls, turns and hangs"),
    (r"a rule of part (\w) for how pupils may move", "Drift, spiral and flutter in any order."),
    (r"a rule of part (\w) for when .+", "Go while the drum is soft. Hang still when it stops."),
    (r"the words or code of the curriculum .+", "Creating combines skills and knowledge."),
    (r"what in this unit meets it for .+", "Pupils make, change and perform a dance of their own."),
    (r"title of lesson (\d) .+", "The wind, day {0}"),
    (r"what pupils will have made by the end .+", "A piece of the kite dance, start to end."),
    (r"what to show again and ask before .+", "Play the film. Ask: what pulls the kite?"),
    (r"what you say to set part (\w) going", "The wind is rising. Feel it in your arms first."),
    (r"what pupils try .+", "Drift, then hang still. Try a big flutter and a small one."),
    (r"what pupils may say of part (\w)", "my arms were the tail"),
    (r"the four moves of part (\w) said .+", "Drift, two. Turn, two. Flutter, two. Hang, two."),
    (r"what pupils may have seen in lesson (\d)", "they all hung still"),
    (
        r"a move of part (\w) in your words, .+",
        "**Drift**: go as the wind goes. Seated: lean as it does. On wheels: one gentle push.",
    ),
    (r"the one thing watchers look for .+", "one clear stillness, like a kite that hangs"),
)  # fmt: skip


def words_for(hint: str) -> str:
    """What an author writes where the hint stands; fails for a hint that nobody thought of."""
    if hint in _WORDS:
        return _WORDS[hint]
    for pattern, text in _PATTERNS:
        if found := re.fullmatch(pattern, hint):
            return text.format(*found.groups())
    raise AssertionError(f"no words for the hint {hint!r}")


OF_ONE_LESSON = ("title", "focus", "pupils_make", "story_so_far", "never_did_last")
"""What an author writes otherwise in each lesson."""


def fill(folder: Path) -> int:
    """Write in every open place of the unit in `folder` and take `draft` out; gives how many."""
    total = 0
    for file in sorted(folder.glob("*.md")):
        read = read_markdown(file.name, file.read_bytes())
        assert isinstance(read, Document)
        written: list[str] = []
        data = _filled(read.data, written)
        data.pop("draft", None)
        for field in OF_ONE_LESSON:
            if MARK in read.data.get(field, ""):
                data[field] += f", the {read.data['lesson']}"
        lines = [_line(line, written) for line in read.body.split("\n")]
        total += len(written)
        kind: Kind = "unit" if file.name == "unit.md" else "lesson"
        file.write_text(page(kind, data, "\n".join(lines)), encoding="utf-8", newline="")
    return total


def _line(line: str, written: list[str]) -> str:
    """A line of the notes, with words in place of its mark and its hint."""
    if MARK not in line:
        return line
    written.append(words_for(hint_in(line)))
    return line.partition(MARK)[0] + written[-1]


def _filled(value: Any, written: list[str]) -> Any:
    if isinstance(value, str) and MARK in value:
        written.append(words_for(hint_in(value)))
        return written[-1]
    if isinstance(value, list):
        return [_filled(item, written) for item in value]
    if isinstance(value, dict):
        return {name: _filled(item, written) for name, item in value.items()}
    return value
