"""What is written is what another reader finds: Python's own, against ECMA-376's names."""

from __future__ import annotations

import io
from datetime import date

from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from build_tools.word_files.blocks import Block, Heading, Paragraph, Picture, Run, Table, words
from build_tools.word_files.reading.document import read_document
from build_tools.word_files.writing.document import About, document_bytes
from tests.support.word_files import part, shown, w

EXAMPLES = settings().max_examples
"""As many as every law has; a file takes a hundredth of a second and more."""
ABOUT = About("Tide", "A bank", "cy", date(2026, 3, 1), "Tide, edition 1.0.0")
TEXT = (
    st.text("abc dé“”<&>’—", min_size=1, max_size=20)
    .map(lambda t: " ".join(t.split()))
    .filter(bool)
)
LINE = st.builds(
    lambda text, kind: words(text, kind), TEXT, st.sampled_from(["text", "bullet", "title"])
)
CELL = st.lists(TEXT.map(words), max_size=2).map(tuple)
ROWS = st.integers(1, 3).flatmap(
    lambda n: st.lists(st.lists(CELL, min_size=n, max_size=n).map(tuple), min_size=1, max_size=3)
)
BLOCKS = st.lists(
    st.one_of(
        LINE,
        st.builds(Heading, st.integers(1, 6), TEXT),
        st.builds(lambda rows: Table(tuple(rows)), ROWS),
    ),
    max_size=6,
)


@settings(max_examples=EXAMPLES // 10)
@given(BLOCKS)
def test_what_is_written_is_read_again(blocks: list[Block]) -> None:
    assert list(read_document(document_bytes(ABOUT, blocks)).blocks) == [*map(_plain, blocks)]


def _plain(block: Block) -> Block:
    """A block without the looks of words and what a table is called, which are not read."""
    if isinstance(block, Paragraph):
        return words(block.text, block.kind)
    return Table(block.rows) if isinstance(block, Table) else block


def test_two_tables_stay_two() -> None:
    one = Table((((words("a"),),),))
    assert [b.kind for b in shown(document_bytes(ABOUT, [one, one]))] == [
        "table", "Normal", "table", "Normal"
    ]  # fmt: skip


def test_each_numbered_list_begins_with_one() -> None:
    """17.9.27, startOverride: a list with numbers of its own says where they start."""
    lines = [
        words("walk", "number"),
        words("stop", "number"),
        words("and"),
        words("sink", "number"),
    ]
    data = document_bytes(ABOUT, lines)
    used = [e.attrib[w("val")] for e in part(data, "word/document.xml").iter(w("numId"))]
    assert used[0] == used[1] != used[2]
    starts = {
        one.attrib[w("numId")]: [e.attrib[w("val")] for e in one.iter(w("startOverride"))]
        for one in part(data, "word/numbering.xml").findall(w("num"))
    }
    assert starts[used[0]] == starts[used[2]] == ["1"]


def test_a_numbered_list_goes_on_after_a_list_inside_it() -> None:
    outer, inner = words("walk", "number"), words("slowly", "number", 1)
    data = document_bytes(ABOUT, [outer, inner, outer, inner])
    used = [e.attrib[w("val")] for e in part(data, "word/document.xml").iter(w("numId"))]
    assert used[0] == used[2]
    assert len({used[0], used[1], used[3]}) == 3


def test_a_lesson_begins_on_a_page_of_its_own() -> None:
    data = document_bytes(ABOUT, [words("Tide", "title"), Heading(1, "One"), Heading(2, "Two")])
    breaks = part(data, "word/document.xml").iter(w("pageBreakBefore"))
    assert len(list(breaks)) == 1


def test_the_language_is_the_units() -> None:
    data = document_bytes(ABOUT, [words("Llanw")])
    assert [e.attrib[w("val")] for e in part(data, "word/styles.xml").iter(w("lang"))] == ["cy"]


def test_strong_words_are_strong() -> None:
    data = document_bytes(ABOUT, [Paragraph((Run("Say", strong=True), Run(" stop")))])
    runs = list(part(data, "word/document.xml").iter(w("r")))
    assert [run.find(f"{w('rPr')}/{w('b')}") is not None for run in runs] == [True, False]


def test_a_picture_has_its_text_version() -> None:
    drawn = io.BytesIO()
    Image.new("RGB", (4, 2), "white").save(drawn, "PNG")
    data = document_bytes(ABOUT, [Picture(drawn.getvalue(), "A “crab” & a pool")])
    assert read_document(data).blocks == (Picture(b"", "A “crab” & a pool"),)
