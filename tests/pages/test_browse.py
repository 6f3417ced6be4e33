"""Looking through units: every unit is reached by topic, year and subject, and no page grows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from build_tools.pages.browse.browse import A_PAGE, SHELVES, BrowseView, browse_pages
from build_tools.pages.front.front import FEW, FrontView, chosen_few, front_page
from build_tools.pages.pieces.shelved import Shelved, shelved
from tests.support.sound_bank import real_bank, real_unit


def views(units: Sequence[Shelved]) -> dict[str, BrowseView]:
    found = {page.path: page.context for page in browse_pages(real_bank(), units)}
    assert all(isinstance(view, BrowseView) for view in found.values())
    return found  # type: ignore[return-value]


def again(one: Shelved, slug: str) -> Shelved:
    """The same unit in a folder of another name."""
    card = replace(one.card, href=f"units/{slug}/index.html")
    return Shelved(replace(one.found, slug=slug), card, one.picture_size)


def many(number: int) -> list[Shelved]:
    pool = shelved(real_bank(), real_unit())
    return [again(pool, f"pool-{n:04}") for n in range(number)]


def three() -> list[Shelved]:
    return [shelved(real_bank(), unit) for unit in real_bank().units]


@pytest.mark.parametrize("number", [0, 1, A_PAGE, A_PAGE + 1, 3 * A_PAGE + 5])
def test_every_unit_is_reached_from_each_list_and_no_page_is_long(number: int) -> None:
    units = many(number)
    found = views(units)
    for shelf in SHELVES:
        top = found[f"browse/{shelf.plural}.html"]
        reached: set[str] = set()
        waiting = [choice.href for choice in top.choices]
        seen: set[str] = set()
        while waiting:
            href = waiting.pop()
            seen.add(href)
            page = found[f"browse/{href}"]
            assert 0 < len(page.units) <= A_PAGE
            reached |= {card.href for card in page.units}
            waiting += [link.href for link in page.turn if link.href not in seen]
        assert reached == {f"../units/{unit.found.slug}/index.html" for unit in units}


def test_each_choice_says_how_many() -> None:
    years = views(three())["browse/years.html"]
    assert [(one.words, one.units) for one in years.choices][:2] == [
        ("Year 1 (England)", "1 unit"),
        ("Year 2 (England)", "1 unit"),
    ]
    topics = views(three())["browse/topics.html"]
    assert "Victorians" in {one.words for one in topics.choices}


def test_the_front_page_shows_a_few_of_different_ages_however_many_there_are() -> None:
    bank = [again(one, f"{one.found.slug}-{n}") for one in three() for n in range(50)]
    few = chosen_few(bank)
    assert len(few) == FEW
    assert len({one.found.ages for one in few}) == FEW
    small, large = (front_page(real_bank(), units).context for units in (three(), bank))
    assert isinstance(small, FrontView)
    assert isinstance(large, FrontView)
    assert len(large.chosen_few) == len(small.chosen_few)


def test_the_front_page_shows_the_picture_that_loads_soonest_and_no_empty_card() -> None:
    one = three()[0]
    bank = [
        replace(again(one, f"{one.found.slug}-{n}"), picture_size=size)
        for n, size in enumerate((900, 0, 300, 500, 200, 0, 0, 0, 0))
    ]
    assert [unit.picture_size for unit in chosen_few(bank)] == [300, 200, 0]
