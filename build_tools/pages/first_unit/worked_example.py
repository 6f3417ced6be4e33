"""The unit that is written on the page: what is typed, and what an author writes at each mark.

A test does all of it, word for word.
"""

from __future__ import annotations

SLUG = "paper-birds"

ANSWERS = (
    ("What is the unit called?", "Paper birds"),
    ("What does the dance start from?", "A sheet of paper, folded into a bird"),
    ("How do pupils meet it?", "see,do"),
    ("For which school years?", "England 3 and 4"),
    ("How many lessons?", "1"),
    ("How many minutes is a lesson?", "40"),
    ("Which pattern?", "1"),
)
"""What `new` asks, and what is typed."""

LESSON = (
    ("title of lesson 1 in two to six words", "A bird unfolds"),
    (
        "what pupils will have made by the end of lesson 1",
        "A dance in pairs that folds, opens and glides, with one change of level.",
    ),
    (
        "what to show again and ask before lesson 1",
        "Fold the paper once more. Ask what it does when it is let go.",
    ),
    ("what you say to set part A going", "You are flat paper. One crease, and a wing lifts."),
    (
        "what pupils try out for part A, from what you showed",
        "Try a fold, an opening and a glide. Then one slow and one quick.",
    ),
    ("what pupils may say of part A", "my arms opened like two wings"),
    (
        "the four moves of part A said on their counts",
        "Glide, two. Wheel, two. Flutter, two. Perch, two.",
    ),
    ("the one thing watchers look for in lesson 1", "one move that is clearly lower than before"),
    ("what pupils may have seen in lesson 1", "the flutter was low the second time"),
    (
        "a move of part A in your words, then how it goes seated and on wheels; a line each",
        "**Glide**: two long steps, arms wide. Seated: lift the feet by turns, arms wide. "
        "On wheels: one gentle push, then arms wide.",
    ),
)
"""What stands at each mark in lesson-1.md, and what an author writes there."""

MOVES = (
    ("travel in a word", "glide"),
    ("turn in a word", "wheel"),
    ("gesture in a word", "flutter"),
    ("stillness in a word", "perch"),
    ("what motif-a stands for", "A paper bird that glides, wheels and settles"),
    ("what part A is about, in a line", "A sheet of paper becomes a bird and tries its wings."),
    ("one shape to choose", "wide like open wings"),
    ("a second shape to choose", "narrow like a folded sheet"),
    ("the shape that you give", "Wide like open wings."),
)
"""The same in unit.md for what the lesson shows."""

REST = (
    ("a school subject it links to", "Art and design"),
    (
        "what the dance will be, in one sentence",
        "A sheet of paper folds itself into a bird that glides, wheels and settles.",
    ),
    (
        "what you show or do with the stimulus, step by step",
        "Fold a paper bird slowly, then let it drop from your hand.",
    ),
    ("the one thing pupils look or listen for in the stimulus", "How the wings open as it falls."),
    (
        "what in it could upset a pupil and what you do",
        "Nothing is likely to. Who would rather not fold may watch.",
    ),
    (
        "what every pupil shows of the idea by the end",
        "shows flat paper, a folded wing and a glide, with control and long arms",
    ),
    ("what you see when the idea is there", "A watcher can say where the paper becomes a bird."),
    ("what you see of the idea on the way", "The folds are clear."),
    ("what you see of the idea beyond that", "The glide carries on through the turn."),
    (
        "how the dance ends, in three counts or three breaths",
        "Everyone perches in the shape they chose, for three breaths.",
    ),
    (
        "what in this unit meets it for key stage 2",
        "Pupils make, change and perform a motif of four moves.",
    ),
    ("what pupils have done before", "Moving in a shared space and keeping a beat of eight."),
    (
        "what pupils can go on to after this unit",
        "Longer motifs, and changing two things at once.",
    ),
)
"""The same for the rest of unit.md."""
