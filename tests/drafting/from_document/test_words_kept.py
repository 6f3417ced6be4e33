"""No word of any file is lost: it stands in the draft, or the screen lists it with where it was."""

from __future__ import annotations

from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from build_tools.drafting.from_document.draft_from_document import DraftFromDocument
from tests.drafting.from_document.making import drafted, fields_of, tokens, told, without_clock
from tests.support.word_files import document, paragraph, table, written

WORDS = st.text("abcdefghijkl éøŵ’\"'<>#*_-[](){}:.?!|\\`~✎&1270\u200b", min_size=0, max_size=60)
LONG = st.builds(
    lambda word, own, n: f"{word} q{own} " * n,
    WORDS,
    st.integers(1, 10**6),
    st.sampled_from([1, 1, 1, 12, 60]),
)
"""Texts, each with a word of its own."""
LABELS = st.sampled_from(
    ["Minutes", "Say", "Pupils", "Do", "Look for", "Ask", "Easier", "Harder", "Groups", "Stand",
     "Beat", "Step 1", "Step 7", "Phase", "Notes for you", "Facing", "Into groups"]
)  # fmt: skip
VALUES = st.one_of(
    LONG,
    st.sampled_from(
        ["5", "5 minutes", "0 to 5", "5-10 mins", "about 7 minutes", "400 minutes", "In pairs",
         "warm-up", "0 to 5 · 5 minutes · make · In pairs · say “Find a partner.”", "8 counts.",
         "9 counts, about 4 seconds.", "What did you see? They may say: we sank; we rose.",
         "Why? (looks back to lesson 3) They may say: a; b; c; d; e; f.", "The wall. Facing: sea."]
    ),
)  # fmt: skip
ROW = st.one_of(
    st.tuples(LABELS, VALUES).map(list), st.lists(LONG, min_size=1, max_size=3),
    st.lists(LABELS, min_size=2, max_size=4),
)  # fmt: skip
TABLE = st.lists(ROW, min_size=1, max_size=5).map(table)
HEADINGS = st.one_of(
    WORDS,
    st.sampled_from(
        ["Lesson 1: Waves", "Lesson 4", "What to get", "Before they move", "Look and talk",
         "What if …", "Words for today", "Notes for you", "The story so far", "Safety",
         "1. Walk and stop", "Change it to fit your class", "Can’t dance today", "Aims"]
    ),
)  # fmt: skip
LINES = st.one_of(
    LONG,
    st.sampled_from(
        ["45 minutes. You do not need to demonstrate.", "They are stuck: say it again",
         "If you saw it: dance on", "Look for: stillness", "Pupils look. They look at it.",
         "Partners look at each other. They look at the tide.", "canon: one after another",
         "Half the class watched the other half. They talk about the tide.",
         "Never did lesson 2? Start here: Walk it.", "What it is for: to sink slowly",
         "You are short of time: Leave out two. That is step 2: it saves 4 minutes.",
         "You are short of time: Leave out two. That is step 2, 4 minutes of the plan.",
         "Free to share and change under CC BY-SA 4.0 (creativecommons.org/licenses/by-sa/4.0)."]
    ),
)  # fmt: skip
BLOCK = st.one_of(
    st.builds(paragraph, HEADINGS, st.sampled_from(["heading1", "heading2", "heading3"])),
    st.builds(paragraph, LINES, st.sampled_from(["", "ListBullet", "Title"])),
    TABLE,
)
BODY = st.lists(BLOCK, max_size=14).map("".join)


# a draft takes a tenth of a second, and to make a failing file smaller takes hundreds of them
@settings(max_examples=settings().max_examples // 4, phases=(Phase.explicit, Phase.generate))
@given(BODY)
def test_every_word_is_in_the_draft_or_told(body: str) -> None:
    made = drafted(written(document(body)))
    if not isinstance(made, DraftFromDocument):
        return
    for name in made.files:
        fields_of(made, name)
    kept = told(made)
    for text in _texts(body):
        missing = {one for one in tokens(without_clock(text)) if one not in kept}
        assert not missing, (missing, text)


def _texts(body: str) -> list[str]:
    """The words of each paragraph as they were written into the XML."""
    from xml.etree import ElementTree

    from tests.support.word_files import text_in, w

    root = ElementTree.fromstring(document(body))
    return [text_in(one).replace("\u200b", "") for one in root.iter(w("p"))]
