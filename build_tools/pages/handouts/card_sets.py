"""Cards to cut out, as the page to print shows them: letters, numbers, signs, words, devices."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.page_words.words import N_, _, of_schema
from build_tools.pages.handouts.handed_out import CardSetView, CardView, by_hand
from build_tools.pages.pieces.motif_drawn import MotifDrawn, motif_drawn
from build_tools.views.dance.moves_before import moves_before
from build_tools.views.diagrams.body_sprite import BodyDrawn, body_drawn, body_picture
from build_tools.views.diagrams.svg import text_width
from build_tools.views.lesson.asked_to_get import Kind
from build_tools.views.lesson.device_cards import DeviceCard, device_card, with_examples
from build_tools.views.lesson.to_print import CardSet, ToPrint
from build_tools.views.words.plain_words import action_label
from build_tools.views.words.punctuation import capital

CARD_POINTS = 54
"""The size of the words on cards; the styles print them in it."""
_NARROW_CARD = 232.0
"""What a card of half a side's width holds, in points."""
_SETS = {
    "pairs": N_("One set for each pair"),
    "threes": N_("One set for each three"),
    "fours": N_("One set for each group of four"),
    "fives": N_("One set for each group of five"),
    "sixes": N_("One set for each group of six"),
}
_SET = N_("One set")
_SETS_IN_A_ROW = {
    "pairs": N_("one set for each pair"),
    "threes": N_("one set for each three"),
    "fours": N_("one set for each group of four"),
    "fives": N_("one set for each group of five"),
    "sixes": N_("one set for each group of six"),
}
_SET_IN_A_ROW = N_("one set")
_HEADINGS = {
    Kind.LETTERS: N_("Letter cards"),
    Kind.NUMBERS: N_("Number cards"),
    Kind.SIGNS: N_("Signs for the walls"),
    Kind.WORDS: N_("Word cards"),
    Kind.DEVICES: N_("Device cards"),
}
_SIZES = {Kind.LETTERS: "large", Kind.NUMBERS: "large", Kind.SIGNS: "sign"}


def card_bodies(dance: Dance, names: Sequence[str]) -> dict[str, BodyDrawn]:
    """The body in each move of the motifs, by the move's word in small letters."""
    found: dict[str, BodyDrawn] = {}
    for name in names:
        actions = actions_of(dance, name)
        for action, before in zip(actions, moves_before(actions), strict=True):
            found.setdefault(action_label(action).casefold(), body_drawn(action, before))
    return found


@dataclass(frozen=True, slots=True)
class Devices:
    """Cards that name a device, by their words, and the motif that shows each."""

    cards: Mapping[str, DeviceCard]
    """Each by its word."""
    drawn: Mapping[str, MotifDrawn]
    """Its drawing, by the same, where there is one."""


def device_cards(bank: Bank, unit: Unit, printed: ToPrint) -> Devices:
    """The cards of what is printed that name a device."""
    words = [word for one in printed.cards if one.kind is Kind.DEVICES for word in one.cards]
    cards = {word: device_card(unit, bank.words, word) for word in words}
    dance = with_examples(unit.dance, words, bank.words)
    drawn = {word: motif_drawn(dance, one.drawn) for word, one in cards.items() if one.drawn}
    return Devices(cards, drawn)


def card_set(one: CardSet, bodies: Mapping[str, BodyDrawn], devices: Devices) -> CardSetView:
    """A set of cards as the page shows it; `bodies` by the words of the moves they show."""
    told = one.kind is Kind.DEVICES
    in_a_row = _(_SETS_IN_A_ROW.get(one.grouping, _SET_IN_A_ROW)) if one.grouping else None
    return CardSetView(
        anchor=one.anchor,
        heading=_(_HEADINGS[one.kind]),
        size="device" if told else "small" if one.grouping else _SIZES.get(one.kind, "word"),
        grouping=one.grouping,
        said=_(_SETS.get(one.grouping, _SET)) if one.grouping else None,
        in_a_row=in_a_row,
        cards=tuple(
            _device(devices, word) if told else _card(word, bodies.get(word.casefold()), one)
            for word in one.cards
        ),
        by_hand=by_hand(one.sets, in_a_row or ""),
    )


def _device(devices: Devices, word: str) -> CardView:
    shown, means = devices.drawn.get(word), devices.cards[word].plain
    if shown is None:
        return CardView(capital(of_schema(word)), False, None, means)
    anchor = f"at-device-{word.replace(' ', '-')}"
    return CardView(
        word=capital(of_schema(word)),
        wide=False,
        body=None,
        means=means,
        drawing=Markup(str(shown.picture.svg).replace("<svg ", f'<svg id="{anchor}" ', 1)),
    )


def _card(word: str, body: BodyDrawn | None, of: CardSet) -> CardView:
    longest = max(word.split(), key=lambda part: text_width(part, CARD_POINTS, bold=True))
    wide = text_width(longest, CARD_POINTS, bold=True) > _NARROW_CARD and of.grouping is None
    shown = body if of.kind is Kind.WORDS else None
    return CardView(word, wide, Markup(body_picture(shown)) if shown else None)
