"""What the bank teaches: what the page shows, and that it does not grow with the bank."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from build_tools.pages.what_is_taught.what_is_taught import FEW, ROWS, TaughtView, taught_page
from build_tools.views.teaching.by_year import by_year
from build_tools.views.teaching.covers import Covers, covers
from tests.pages.test_contexts import environment
from tests.support.drawn import seen_in
from tests.support.sound_bank import real_bank, whole_bank
from tests.views.teaching.made_covers import bare


def known() -> list[Covers]:
    return [covers(unit) for unit in whole_bank().units]


def view(units: Sequence[Covers]) -> TaughtView:
    context = taught_page(real_bank(), units).context
    assert isinstance(context, TaughtView)
    return context


def html(units: Sequence[Covers]) -> str:
    return environment().get_template("what_is_taught/what_is_taught.html").render(view=view(units))


def many(number: int) -> list[Covers]:
    """The published units again and again under other names, each naming its neighbours."""
    units = known()
    return [
        replace(
            one,
            slug=f"{one.slug}-{n:04}",
            builds_on=tuple(f"{slug}-{n:04}" for slug in one.builds_on),
            leads_to=tuple(f"{slug}-{n:04}" for slug in one.leads_to),
        )
        for n in range(-(-number // len(units)))
        for one in units
    ][:number]


def test_the_tables_say_what_is_counted() -> None:
    (nation,) = by_year(known())
    (shown,) = view(known()).nations
    for table, (heading, rows) in zip(shown.tables, nation.headings.items(), strict=False):
        assert table.anchor.endswith(heading)
        assert table.picture is not None
        assert [row.units for row in table.rows] == [tuple(map(str, row.units)) for row in rows]
    links = shown.tables[-1]
    assert links.heading == "Curriculum links"
    assert len(links.rows) == len(nation.links) > 1


def test_what_a_year_misses_is_said_under_its_heading() -> None:
    units = [bare("one"), bare("other", years=(("England", "4"),))]
    (nation,) = view(units).nations
    two, three, four = nation.missing
    assert (two.year, three.year, four.year) == (
        "Year 2: 1 unit", "Year 3: 0 units", "Year 4: 1 unit",
    )  # fmt: skip
    assert "Actions: travel, turn, jump, gesture, stillness and transfer of weight" in two.lines
    assert three.lines == ("Everything: no unit is for this year",)


def test_it_names_a_few_units_and_counts_the_rest() -> None:
    shown = view(many(1500))
    (licence,) = (one for one in shown.licences if one.units.number == "1500")
    assert len(licence.units.first) == FEW
    assert licence.units.more == f"and {1500 - FEW} more"
    assert all(len(kind.rows) <= ROWS for kind in shown.repeats)
    assert len(shown.chains) == ROWS
    assert "no chain shown here" in shown.chains_said


def test_the_page_does_not_grow_with_the_bank() -> None:
    once = len(known())
    small, large = html(many(20 * once)), html(many(100 * once))
    assert len(large) < 1.05 * len(small)
    links = [len(seen_in(page).values("a", "href")) for page in (small, large)]
    assert links[0] == links[1]


def test_topics_that_nobody_takes_up_are_counted() -> None:
    bank, units = real_bank(), known()
    taken = {topic for unit in units for topic in unit.topics}
    left = len(set(bank.topics) - taken)
    assert f"No unit takes up {left} of the bank’s {len(bank.topics)} topics" in (
        view(units).topics_left
    )
    every = bare("every", topics=tuple(bank.topics))
    assert view([every]).topics_left.startswith("Every topic")


def test_a_bank_without_units_is_shown_too() -> None:
    shown = html([])
    assert "0 published units" in shown
    assert "No unit says that it comes before or after another." in shown


def test_its_tables_can_be_read_and_reached() -> None:
    found = seen_in(html(known()))
    tables = [n for n, _ in found.elements if n == "table"]
    frames = [a for n, a in found.elements if a.get("class") == "table"]
    assert len(tables) == len(frames) == len([n for n, _ in found.elements if n == "caption"])
    assert all(a["tabindex"] == "0" and a["aria-labelledby"] in found.ids() for a in frames)
    assert all(a.get("scope") in ("col", "row") for n, a in found.elements if n == "th")
