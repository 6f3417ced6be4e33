"""The dance in one line: its length and how its sections follow one another."""

from __future__ import annotations

from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.movement.counts import figures
from build_tools.movement.forms import returns_to_start
from build_tools.movement.letters import is_changed
from build_tools.movement.theme import form_in_words
from build_tools.movement.whole_length import whole_counts, whole_seconds
from build_tools.page_words.forms import number_in_words
from build_tools.page_words.words import N_, _, ngettext
from build_tools.views.words.plain_words import counts_in_words, listed, seconds_in_words
from build_tools.views.words.punctuation import capital, quoted
from build_tools.views.words.sections_called import in_a_sentence

_ROUGHLY = {
    0: (N_("a minute"), N_("{number} minutes")),
    1: (N_("a minute and a quarter"), N_("{number} and a quarter minutes")),
    2: (N_("a minute and a half"), N_("{number} and a half minutes")),
    3: (N_("a minute and three quarters"), N_("{number} and three quarters minutes")),
}


def dance_told(dance: Dance) -> str:
    """How long the dance is and how it goes, in whole sentences without letters."""
    length = whole_seconds(dance)
    lines = []
    if length:
        about = _roughly((length.least + length.most) / 2)
        lines.append(_("It lasts about {time}.", time=about))
    if dance.order_choice:
        lines.append(_("Your class decides in which order the parts come."))
    elif returns_to_start(dance.form):
        lines.append(
            _("The first part comes back at the end, changed.")
            if is_changed(dance.form[-1])
            else _("The first part comes back at the end, as it was, so it ends as it began.")
        )
    free = [section for section in dance.sections.values() if section.counts is None]
    if free and len(free) < len(dance.sections):
        lines.append(
            _("Nobody counts in {parts}.", parts=listed([_quoted_part(one) for one in free]))
        )
    return " ".join(lines)


def _quoted_part(section: Section) -> str:
    """A part by its letter, with its name as a name: part B, “through the gap”."""
    if not section.name:
        return in_a_sentence(section)
    return _("part {letter}, {name}", letter=section.letter, name=quoted(section.name))


def _roughly(seconds: Fraction) -> str:
    """To ten seconds below a minute, else to a quarter of a minute, as people say it."""
    quarters = round(seconds / 15)
    if quarters < 4:
        about = round(seconds / 10) * 10
        return ngettext("{number} second", "{number} seconds", about)
    whole, part = divmod(quarters, 4)
    one, many = _ROUGHLY[part]
    return _(one) if whole == 1 else _(many, number=number_in_words(whole))


def whole_dance_in_words(dance: Dance) -> str:
    """How long the dance is and how its sections follow one another."""
    counts, length = whole_counts(dance), whole_seconds(dance)
    order = f"{' '.join(dance.form)}: {form_in_words(dance)}."
    varies = counts.least != counts.most
    if dance.order_choice:
        order = (
            _("Pupils choose the order of the sections, and with it the counts.")
            if varies
            else _("Pupils choose the order of the sections.")
        )
    long = []
    if counts.most:
        said = counts_in_words(counts.most)
        if varies:
            said = _("{least} to {most}", least=figures(counts.least), most=said)
        if dance.tempo:
            said = _("{counts} at {tempo} beats a minute", counts=said, tempo=dance.tempo)
        long.append(said)
    if any(section.counts is None for section in dance.sections.values()):
        long.append(_("what is not counted"))
    parts = capital(listed(long))
    if length:
        parts = _("{parts}; about {time} in all", parts=parts, time=seconds_in_words(length))
    return f"{order} {parts}."
