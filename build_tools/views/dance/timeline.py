"""One timeline of everything that is heard in a dance: what the player, the saved sound and the
pages say of it, and what rules ask.

Where the unit does not say what is heard, only what its sound says for certain is taken from that:
a silence is silent, a voice counts without a drum, a drum beats on every count, a recording is the
school's own. Anything else is not known, and nothing is played for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise

from build_tools.model.dance import Dance, Heard, Section, Transition
from build_tools.movement.counts import counts_in
from build_tools.movement.sounding import Piece, between, laid, later
from build_tools.movement.whole import stretches, transition_between, transition_counts
from build_tools.views.dance.parts_over_counts import parts_over_counts

_USUAL = {"silence": "silence", "voice": "voice", "drum": "beat", "recorded": "recording"}
"""What each kind of sound is heard as; pupils' own live sound may be anything."""


@dataclass(frozen=True, slots=True)
class Sounding:
    """What is heard in one section or join.

    `pieces` are in counts where the stretch is counted, else in seconds; none where nothing is
    known, and none in a join that takes no counts. `said` is whether the unit says it itself.
    """

    pieces: tuple[Piece, ...]
    known: bool
    said: bool

    @property
    def length(self) -> Fraction:
        """How long all of it lasts, in counts or seconds of the stretch."""
        return self.pieces[-1].end if self.pieces else Fraction(0)


_NOT_KNOWN = Sounding((), known=False, said=False)
_NO_TIME = Sounding((), known=True, said=False)


def timeline(dance: Dance) -> tuple[Sounding, ...]:
    """What is heard in each section and join of the dance, in the order of its form."""
    found: list[Sounding] = []
    parts = stretches(dance)
    for n, part in enumerate(parts):
        if part.section is not None:
            found.append(section_sounding(dance, part.section))
        elif part.transition is not None:
            before, after = parts[n - 1].section, parts[n + 1].section
            if before is None or after is None:
                raise ValueError("a join stands between two sections")
            found.append(join_sounding(dance, before, part.transition, after))
    return tuple(found)


def section_sounding(dance: Dance, section: Section) -> Sounding:
    """What is heard in `section`, from its start."""
    if dance.sections.get(section.letter) is not section:
        return _section(dance, section)
    known = _sections_known(dance)
    if section.letter not in known:
        known[section.letter] = _section(dance, section)
    return known[section.letter]


@lru_cache(maxsize=8)
def _sections_known(_dance: Dance) -> dict[str, Sounding]:
    """What is heard in the sections of a dance, worked out where it was asked for."""
    return {}


def _section(dance: Dance, section: Section) -> Sounding:
    counted = section.counts is not None
    if section.heard:
        return _laid(dance, section.heard, counted=counted, said=True)
    usual = _usual(dance, section)
    return _NOT_KNOWN if usual is None else _laid(dance, [usual], counted=counted, said=False)


def join_sounding(dance: Dance, first: Section, join: Transition, second: Section) -> Sounding:
    """What is heard in `join`, between the sections `first` and `second`.

    Where the unit does not say, the sound on both sides goes on if it is one and the same.
    """
    counts = transition_counts(join)
    if counts <= 0:
        return _NO_TIME
    if join.heard:
        return _laid(dance, join.heard, counted=True, said=True)
    before, after = _plain(dance, first, -1), _plain(dance, second, 0)
    if before is None or before != after:
        return _NOT_KNOWN
    return _plainly(dance, before, counts)


def joined_sounding(dance: Dance, letters: Sequence[str], counts: Fraction) -> Sounding:
    """What is heard where sections are danced one after another with the joins between them.

    Not known where any of it is not, or where that lasts anything else than `counts`.
    """
    sections = [dance.sections[letter] for letter in letters]
    heard = [section_sounding(dance, sections[0])]
    for before, after in pairwise(sections):
        join = transition_between(dance, before.letter, after.letter)
        if join is not None:
            heard.append(join_sounding(dance, before, join, after))
        heard.append(section_sounding(dance, after))
    if any(section.counts is None for section in sections) or not all(h.known for h in heard):
        return _NOT_KNOWN
    pieces: list[Piece] = []
    for one in heard:
        start = pieces[-1].end if pieces else Fraction(0)
        pieces += (later(piece, start) for piece in one.pieces)
    if not pieces or pieces[-1].end != counts:
        return _NOT_KNOWN
    return Sounding(tuple(pieces), known=True, said=all(one.said for one in heard))


def practice_sounding(
    dance: Dance, sections: Sequence[Section], counts: Fraction, motif: str | None = None
) -> Sounding:
    """What is heard where `counts` counts of what `sections` dance are practised.

    One section danced whole sounds as it does in the dance, and so does one `motif` whose own
    counts there have several sounds: a beat on a count that is silent would be learned with it.
    Anything else is practised to a plain beat if a beat sounds in any of the sections, and
    otherwise to the first sound that is known.
    """
    if len(sections) == 1 and sections[0].counts == counts:
        return section_sounding(dance, sections[0])
    if motif is not None and (own := _of_its_own_counts(dance, sections, counts, motif)):
        return Sounding(own, known=True, said=True)
    heard = [p.sound for s in sections for p in section_sounding(dance, s).pieces]
    if not heard:
        return _NOT_KNOWN
    sound = "beat" if "beat" in heard else heard[0]
    return _plainly(dance, sound, counts)


def _of_its_own_counts(
    dance: Dance, sections: Sequence[Section], counts: Fraction, motif: str
) -> tuple[Piece, ...]:
    """What sounds on the counts on which a motif is first danced; none where it is all one sound,
    or where the unit does not say it.
    """
    for section in sections:
        for span in parts_over_counts(dance, section).spans if section.counts is not None else ():
            if span.what == motif and span.end - span.start == counts:
                heard = section_sounding(dance, section)
                pieces = between(heard.pieces, span.start, span.end) if heard.said else ()
                return pieces if len({one.sound for one in pieces}) > 1 else ()
    return ()


@lru_cache(maxsize=64)
def _plainly(dance: Dance, sound: str, counts: Fraction) -> Sounding:
    """One sound for so many counts, as in many steps and joins."""
    return _laid(dance, [Heard(sound, counts=counts)], counted=True, said=False)


def sections_with(dance: Dance, name: str) -> tuple[Section, ...]:
    """The sections that dance the motif or development `name`, or else what is made from it."""
    made = {name} | {d.name for d in dance.developments.values() if name in (d.of, d.joined_to)}
    danced = {s.letter: {w for p in s.danced for w in p.what} for s in dance.sections.values()}
    own = tuple(s for s in dance.sections.values() if name in danced[s.letter])
    return own or tuple(s for s in dance.sections.values() if made & danced[s.letter])


def span_seconds(section: Section, sounding: Sounding) -> Fraction:
    """How long a section without counts is in a saved sound: what is heard, or its middle."""
    if sounding.pieces:
        return sounding.length
    return _middle(section)


def _laid(dance: Dance, heard: Sequence[Heard], *, counted: bool, said: bool) -> Sounding:
    pieces = laid(heard, counted=counted, tempo=dance.tempo, phrase=dance.phrase)
    return _NOT_KNOWN if pieces is None else Sounding(pieces, known=True, said=said)


def _usual(dance: Dance, section: Section) -> Heard | None:
    """What a section's sound says for certain; None where it does not."""
    sound = _usual_sound(dance, section)
    if sound is None:
        return None
    if section.counts is None:
        middle = _middle(section)
        if sound == "beat" and dance.tempo is not None:
            return Heard(sound, counts=counts_in(middle, dance.tempo))
        return Heard(sound, seconds=int(middle))
    said = tuple(str(n % dance.phrase + 1) for n in range(-(-section.counts // 1)))
    return Heard(sound, counts=section.counts, says=said if sound == "voice" else ())


def _usual_sound(dance: Dance, section: Section) -> str | None:
    """What a section's sound says for certain; None where it does not.

    Where nothing is counted, the dance's own drum goes on, but nobody knows when a drum is struck
    of which the section says something itself.
    """
    sound = _USUAL.get(section.sound.kind)
    if sound == "beat" and section.counts is None:
        own = section.sound is not dance.sound
        return None if own or dance.tempo is None else sound
    return sound


def _plain(dance: Dance, section: Section, place: int) -> str | None:
    """The first (0) or last (-1) sound of a section, if it is a plain one that can just go on."""
    if not section.heard:
        return _usual_sound(dance, section)
    one = section.heard[place]
    plain = not (one.on or one.louder or one.says) and one.sound in _USUAL.values()
    return one.sound if plain else None


def _middle(section: Section) -> Fraction:
    if section.seconds is None:
        return Fraction(0)
    return Fraction((section.seconds.least + section.seconds.most + 1) // 2)
