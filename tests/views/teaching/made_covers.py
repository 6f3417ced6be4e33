"""What made-up units cover: bare, or drawn by Hypothesis from few words and years."""

from __future__ import annotations

from hypothesis import strategies as st

from build_tools.views.teaching.covers import HEADINGS, Covers, Link

YEARS = (("England", "R"), ("England", "2"), ("England", "5"), ("Scotland", "P3"))
LINK = Link("England", "key stage 1", "move")
NOTHING: dict[str, tuple[str, ...]] = dict.fromkeys(HEADINGS, ())


def bare(slug: str, **changed: object) -> Covers:
    """A unit that covers nothing but what is said."""
    plain: dict[str, object] = {
        "slug": slug,
        "title": slug.capitalize(),
        "issued": "2026-01-01",
        "licence": "CC-BY-4.0",
        "parts": (),
        "years": (("England", "2"),),
        "words": NOTHING,
        "links": (),
        "topics": (),
        "lessons": 6,
        "builds_on": (),
        "leads_to": (),
    }
    return Covers(**(plain | changed))  # type: ignore[arg-type]


@st.composite
def banks(draw: st.DrawFn, most: int = 7) -> tuple[Covers, ...]:
    """A few units of a few words, years and neighbours; neighbours may stand in a circle."""
    names = [f"u{n}" for n in range(draw(st.integers(0, most)))]
    near = st.lists(st.sampled_from([*names, "gone"]), max_size=2, unique=True).map(tuple)
    words = st.lists(st.sampled_from(HEADINGS["actions"]), unique=True).map(tuple)
    return tuple(
        bare(
            name,
            years=draw(st.lists(st.sampled_from(YEARS), min_size=1, unique=True).map(tuple)),
            words=NOTHING | {"actions": draw(words)},
            links=(LINK,) if draw(st.booleans()) else (),
            builds_on=draw(near),
            leads_to=draw(near),
        )
        for name in names
    )
