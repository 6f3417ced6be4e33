"""The dance as a score: its stretches laid end to end, and its motifs move by move."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Action, Dance, Seconds, Section, Transition
from build_tools.movement.counts import seconds
from build_tools.movement.development import total
from build_tools.views.dance.dance_line import dance_line
from build_tools.views.dance.left_open import drawn_actions
from build_tools.views.dance.parts_over_counts import RowSpan, in_order, parts_over_counts
from build_tools.views.dance.timeline import Sounding, practice_sounding, sections_with, timeline


@dataclass(frozen=True, slots=True)
class ScoreStretch:
    """A section, or the join before one, in its place in the whole dance.

    `counts` is None where it is not counted, 0 for a cut, and negative for an overlap, which starts
    the next section early; `before` is how many counts of the counted dance come before it.
    `seconds` is None where there are counts but no tempo. `danced` says who dances what, in counts
    from the start of the stretch, over its `rows`, and `jobs` what those do who are not dancing.
    """

    section: Section | None
    join: Transition | None
    counts: Fraction | None
    seconds: Seconds | None
    before: Fraction
    cue: str | None
    """What an uncounted section ends on, or what tells dancers to go on."""
    rows: tuple[str, ...]
    """Who each row of `danced` is, such as ones and twos; one row where all do the same."""
    danced: tuple[RowSpan, ...]
    sounding: Sounding
    """What is heard in it."""
    jobs: tuple[RowSpan, ...] = ()

    @property
    def everything(self) -> tuple[RowSpan, ...]:
        """What is danced and what is done meanwhile, in the order in which it starts."""
        return in_order((*self.danced, *self.jobs))


@dataclass(frozen=True, slots=True)
class Move:
    """One action from count `start` to count `end` of its motif."""

    action: Action
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class ScoreMotif:
    """A motif or a development with its moves; `seconds` is None without a tempo."""

    name: str
    counts: Fraction
    seconds: Fraction | None
    moves: tuple[Move, ...]
    sounding: Sounding
    """To what it is practised."""


@dataclass(frozen=True, slots=True)
class Score:
    """The whole dance. `tempo` is in beats a minute, `phrase` and `counts` in counts."""

    tempo: int | None
    phrase: int
    counts: Fraction
    spans: Seconds
    """What the uncounted sections take together."""
    stretches: tuple[ScoreStretch, ...]
    motifs: tuple[ScoreMotif, ...]

    @property
    def can_be_played(self) -> bool:
        """Whether there is a tempo, and something counted to play at it."""
        return self.tempo is not None and bool(self.counts or self.motifs)


def score(dance: Dance) -> Score:
    """The score of `dance`, in the order of its form."""
    line = dance_line(dance)
    stretches = tuple(
        ScoreStretch(
            section=part.section,
            join=part.transition,
            counts=part.counts,
            seconds=part.seconds,
            before=part.before,
            cue=_cue(part.section, part.transition),
            rows=rows,
            danced=danced,
            sounding=sounding,
            jobs=jobs,
        )
        for part, sounding in zip(line.parts, timeline(dance), strict=True)
        for rows, danced, jobs in (_danced(dance, part.section),)
    )
    return Score(
        tempo=dance.tempo,
        phrase=dance.phrase,
        counts=line.counts,
        spans=_spans(stretches),
        stretches=stretches,
        motifs=tuple(_motif(dance, n) for n in (*dance.motifs, *dance.developments)),
    )


def _cue(section: Section | None, join: Transition | None) -> str | None:
    return section.ends_on if section is not None else join.cue if join is not None else None


def _danced(
    dance: Dance, section: Section | None
) -> tuple[tuple[str, ...], tuple[RowSpan, ...], tuple[RowSpan, ...]]:
    """Rows, what they dance and their jobs; nothing where there are no counts to lay it on."""
    if section is None or section.counts is None:
        return ("everyone",), (), ()
    found = parts_over_counts(dance, section)
    return found.names, found.spans, found.jobs if section.danced else ()


def _spans(stretches: tuple[ScoreStretch, ...]) -> Seconds:
    uncounted = [s.seconds for s in stretches if s.counts is None and s.seconds is not None]
    return Seconds(
        sum((s.least for s in uncounted), Fraction(0)),
        sum((s.most for s in uncounted), Fraction(0)),
    )


def _motif(dance: Dance, name: str) -> ScoreMotif:
    moves, start = [], Fraction(0)
    for action in drawn_actions(dance, name):
        moves.append(Move(action, start, start + action.counts))
        start += action.counts
    counts = total(drawn_actions(dance, name))
    length = seconds(counts, dance.tempo) if dance.tempo is not None else None
    sounding = practice_sounding(dance, sections_with(dance, name), counts, name)
    return ScoreMotif(name, counts, length, tuple(moves), sounding)
