"""A lesson as it is printed: its parts, each in runs of words, and all of its words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import chain

from build_tools.page_words.words import _
from build_tools.views.diagrams.strip import StripSize
from build_tools.views.paper.typeface import Run

Runs = tuple[Run, ...]
"""Words that run on from one to the next."""

APART = 0.6
"""The gap after what runs on in one line with other things, in sizes of its words."""


@dataclass(frozen=True, slots=True)
class PrintedStep:
    """One step: its heading and the time at its right, then what is said, done and asked."""

    title: Run
    phase: Run
    """Left out in the smallest print."""
    how: Run
    time: str
    say: str | None
    task: Runs
    rest: Runs
    told: Runs = ()
    """Its moves and who dances what, a paragraph of their own, as far as there is room."""


@dataclass(frozen=True, slots=True)
class PrintedTalk:
    """Looking and talking."""

    opening: Runs
    asks: tuple[Runs, ...]
    heading: Run | None
    rows: tuple[Runs, ...]


@dataclass(frozen=True, slots=True)
class PrintedLesson:
    """A lesson as it is printed, from its title to the last line."""

    title: str
    place: str
    lead: str
    facts: Runs
    caption: str
    picture: StripSize
    collect: tuple[str, ...]
    short: tuple[tuple[str, str], ...]
    """The lesson in short: from which minute to which, and what is done."""
    run_in: Runs
    """The lesson in short where it runs on in one paragraph; empty where each has its line."""
    before: tuple[tuple[Runs, ...], ...]
    """What comes before they move: sections, and the paragraphs of each."""
    steps: tuple[PrintedStep, ...]
    talk: PrintedTalk | None
    not_dancing: Runs
    trouble_heading: Run
    trouble: tuple[Runs, ...]
    change: Runs
    words: Runs
    deference: str
    teams: Runs = ()
    """Which teams there are, where a fitted lesson is danced in turns."""
    plans: tuple[str, ...] = ()
    """What is written over the plans of the floor, where they stand before the steps."""


def printed_texts(printed: PrintedLesson) -> Iterator[str]:
    """Every text that is printed of a lesson, in the order of the paper."""
    yield from (printed.place, printed.title, printed.lead)
    yield from _texts(printed.facts)
    yield printed.caption
    yield _("What to get") + ":"
    yield from printed.collect
    yield from chain.from_iterable(printed.short)
    yield from _texts(chain.from_iterable(chain.from_iterable(printed.before)))
    yield from printed.plans
    for step in printed.steps:
        yield from (step.time, step.title.text, step.phase.text, step.how.text)
        yield from ((_("Say"), step.say) if step.say else ())
        yield from _texts((*step.task, *step.rest, *step.told))
    if talk := printed.talk:
        yield from _texts((*talk.opening, *chain.from_iterable(talk.asks)))
        yield from _texts((talk.heading,) if talk.heading else ())
        yield from _texts(chain.from_iterable(talk.rows))
    yield from _texts((*printed.not_dancing, printed.trouble_heading))
    yield from _texts(chain.from_iterable(printed.trouble))
    yield from _texts((*printed.change, *printed.words))
    yield printed.deference


def printed_words(printed: PrintedLesson) -> int:
    """How many words are printed of a lesson."""
    return sum(len(text.split()) for text in printed_texts(printed))


def _texts(runs: Iterable[Run]) -> Iterator[str]:
    return (run.text for run in runs if run.text)


def label(words: str) -> Run:
    """A label, with a little room after it."""
    return Run(words, bold=True, gap=0.15)


def row(name: str, words: str) -> Runs:
    """What a line is about, and the line."""
    return Run(f"{name}:", bold=True), Run(words)


def labelled(name: str, words: str) -> Runs:
    """Words after their label, with room before what runs on after them."""
    return label(name), Run(words, gap=APART)
