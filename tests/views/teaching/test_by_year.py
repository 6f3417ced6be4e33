"""What each school year meets: counted anew by hand over made banks."""

from __future__ import annotations

from hypothesis import given

from build_tools.views.teaching.by_year import by_year, years_between
from build_tools.views.teaching.covers import HEADINGS, Covers
from tests.views.teaching.made_covers import LINK, banks, bare


@given(banks())
def test_each_unit_counts_once_for_each_of_its_years(units: tuple[Covers, ...]) -> None:
    found = by_year(units)
    assert [one.nation for one in found] == sorted({n for u in units for n, _ in u.years})
    for nation in found:
        assert {y for u in units for y in u.years if y[0] == nation.nation} <= {*nation.years}
        for place, year in enumerate(nation.years):
            of_year = [unit for unit in units if year in unit.years]
            assert nation.units[place] == len(of_year)
            for heading, rows in nation.headings.items():
                assert tuple(row.word for row in rows) == HEADINGS[heading]
                for row in rows:
                    has = [unit for unit in of_year if row.word in unit.words[heading]]
                    assert row.units[place] == len(has)
                    assert (row.word in nation.missing(place)[heading]) == (not has)
            for one in nation.links:
                assert one.units[place] == sum(one.link in unit.links for unit in of_year)


def test_a_published_text_is_counted_in_its_own_nation() -> None:
    both = bare("both", years=(("England", "2"), ("Scotland", "P3")), links=(LINK,))
    england, scotland = by_year([both])
    assert [one.link for one in england.links] == [LINK]
    assert scotland.links == ()


def test_a_year_between_two_with_units_is_seen() -> None:
    assert years_between("England", ["3", "R"]) == tuple(("England", y) for y in "R123")
    assert years_between("Scotland", ["S1", "P6"]) == tuple(
        ("Scotland", year) for year in ("P6", "P7", "S1")
    )
    assert years_between("Northern Ireland", ["2"]) == (("Northern Ireland", "2"),)
    (found,) = by_year([bare("one"), bare("two", years=(("England", "4"),))])
    assert found.units == (1, 0, 1)
