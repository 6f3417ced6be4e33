"""The tables are as the pages say, whole, and read as GNU gettext reads them."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from gettext import GNUTranslations
from io import BytesIO
from pathlib import Path
from string import Formatter

import pytest
from babel.messages import Catalog
from babel.messages.catalog import Message
from babel.messages.mofile import write_mo

from build_tools.disk.places import PROJECT
from build_tools.page_words.tables import TABLES, TEMPLATE, catalog, translated
from build_tools.project.page_tables import tables

TRANSLATED = ("cy",)
"""Languages whose table has to say every message."""
_ASKED = {"_": 1, "gettext": 1, "N_": 1, "ngettext": 2, "NN_": 2, "pgettext": 2}
"""The functions that ask for a message, and how many of their arguments are its words."""
_IN_TEMPLATES = re.compile(r"%\((\w+)\)s")


@cache
def template() -> Catalog:
    return catalog(TEMPLATE)


def forms(words: object) -> tuple[str, ...]:
    return (words,) if isinstance(words, str) else tuple(words or ())  # type: ignore[arg-type]


def messages(table: Catalog) -> list[Message]:
    return [one for one in table if one.id]


def test_tables_are_as_the_pages_say() -> None:
    for file, text in tables(PROJECT).items():
        assert file.read_bytes() == text, f"{file.name}: run `python3 build_tools page-words`"


@pytest.mark.parametrize("tag", TRANSLATED)
def test_every_message_is_translated(tag: str) -> None:
    left = [one.id for one in messages(catalog(TABLES / f"{tag}.po")) if not translated(one)]
    assert left == []


@pytest.mark.parametrize("tag", TRANSLATED)
def test_a_translation_has_the_places_of_its_message(tag: str) -> None:
    """A place that is misspelled would stop a page, and one left out would lose what it says."""
    for one in messages(catalog(TABLES / f"{tag}.po")):
        wanted = set().union(*(places(words) for words in forms(one.id)))
        for said in forms(one.string):
            # a form for one may leave the number out
            assert places(said) | {"number"} == wanted | {"number"}, (one.id, said)


def places(words: str) -> set[str]:
    found = set(_IN_TEMPLATES.findall(words))
    return found or {name for _text, name, _spec, _how in Formatter().parse(words) if name}


def test_every_message_of_the_code_is_found() -> None:
    """Python's own parser finds the messages that Babel finds; those inside f-strings it misses."""
    known = {words for one in messages(template()) for words in forms(one.id)}
    asked = set(_asked_in_code())
    assert len(asked) > 200
    assert asked - known == set(), "never ask for a message inside an f-string"


def _asked_in_code() -> Iterator[str]:
    for file in sorted((PROJECT / "build_tools").rglob("*.py")):
        text = file.read_text(encoding="utf-8")
        if "page_words.words import" not in text:
            continue
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                many = _ASKED.get(node.func.id, 0)
                first = 1 if node.func.id == "pgettext" else 0
                for one in node.args[first:many]:
                    if isinstance(one, ast.Constant):
                        assert isinstance(one.value, str)
                        yield one.value
                    else:
                        assert not isinstance(one, ast.JoinedStr), f"{file}: an f-string"


def test_no_module_that_asks_for_messages_uses_their_name_for_something_else() -> None:
    """`for _, step in …` beside `_("…")` in one function would stop the page."""
    for file in sorted((PROJECT / "build_tools").rglob("*.py")):
        text = file.read_text(encoding="utf-8")
        if not re.search(r"page_words\.words import .*\b_\b", text):
            continue
        bound = [
            node.lineno
            for node in ast.walk(ast.parse(text))
            if (isinstance(node, ast.Name) and node.id == "_" and isinstance(node.ctx, ast.Store))
            or (isinstance(node, ast.arg) and node.arg == "_")
        ]
        assert bound == [], f"{file}: give what is not used another name, as `_step`"


@pytest.mark.parametrize("tag", TRANSLATED)
def test_python_reads_a_table_as_babel_does(tag: str) -> None:
    """GNU gettext's .mo, read by Python's standard library (GNU gettext manual, "MO Files")."""
    table, compiled = catalog(TABLES / f"{tag}.po"), BytesIO()
    write_mo(compiled, table)
    compiled.seek(0)
    read = GNUTranslations(compiled)
    for one in messages(table):
        if isinstance(one.id, str) and translated(one) and one.context is None:
            assert read.gettext(one.id) == one.string


def test_english_opens_no_table_and_loads_no_babel() -> None:
    """So `check` and `site` of a bank in English take no longer for it."""
    asks = (
        "import sys; from pathlib import Path\n"
        "from build_tools.page_words.speaking import speaking\n"
        "from build_tools.page_words.words import _, ngettext\n"
        "from build_tools.building.templates import templates\n"
        "with speaking('en-GB'):\n"
        "    assert ngettext('{number} count', '{number} counts', 8) == '8 counts'\n"
        "    templates().from_string('{{ _(\"Steps\") }}').render()\n"
        "from build_tools.page_words.tables import table_for\n"
        "assert table_for.cache_info().currsize == 0\n"
        "assert not any(name.split('.')[0] == 'babel' for name in sys.modules)\n"
    )
    done = subprocess.run([sys.executable, "-c", asks], capture_output=True, text=True, cwd=PROJECT)
    assert done.returncode == 0, done.stderr


def test_the_places_of_tables_are_files_that_are_there() -> None:
    for one in messages(template()):
        for place, _line in one.locations:
            assert Path(PROJECT / place).is_file()


@pytest.mark.parametrize("tag", TRANSLATED)
def test_no_translation_says_itself_twice_over(tag: str) -> None:
    """Messages of the Welsh table once stood in it five times, end to end."""
    twice = re.compile(r"(.{20,}?)\1+", re.DOTALL)
    for one in messages(catalog(TABLES / f"{tag}.po")):
        assert not any(twice.fullmatch(words) for words in forms(one.string)), one.id
