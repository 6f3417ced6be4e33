"""The tables: one .po file a language, beside this module, read as it is when it is first wanted.

The format is that of GNU gettext (gettext manual, "The Format of PO Files" and "Plural forms").
Babel reads it and writes it in memory as the .mo that Python's own `gettext` takes, so nothing has
to be compiled when the bank is set up. Babel takes a while to load, so English never loads it.
"""

from __future__ import annotations

from functools import cache
from gettext import GNUTranslations, NullTranslations
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from babel.messages import Catalog
    from babel.messages.catalog import Message

TABLES = Path(__file__).parent
TEMPLATE = TABLES / "en.pot"
"""Every message there is, in English."""
SCHEMA = "schema"
"""The meaning under which the tables have the words that the schemas list."""
ENGLISH = "en-GB"
"""What the words in the code are in."""
PSEUDO = "en-x-marked"
"""English with each message between marks: what is not between them is in no table yet."""
OPENED, CLOSED = "⟦", "⟧"


@cache
def tag_of(language: str) -> str:
    """The tag of the table to use for a unit's language: the same or without its region."""
    if language == PSEUDO:
        return PSEUDO
    plain = language.partition("-")[0].lower()
    if plain == "en":
        return ENGLISH
    return next((tag for tag in (language, plain) if table_file(tag).is_file()), ENGLISH)


def table_file(tag: str) -> Path:
    """Where the words of a language stand."""
    return TABLES / f"{tag}.po"


@cache
def table_for(tag: str) -> NullTranslations:
    """The words of a language that has a table; a message that it lacks stays in English."""
    if tag == PSEUDO:
        return _Marked()
    from babel.messages.mofile import write_mo

    compiled = BytesIO()
    write_mo(compiled, catalog(table_file(tag)))
    compiled.seek(0)
    return GNUTranslations(compiled)


def catalog(file: Path) -> Catalog:
    """A .po file as it is written."""
    from babel.messages.pofile import read_po

    with file.open("rb") as read:
        return read_po(read, abort_invalid=True)


def translated(message: Message) -> bool:
    """Whether a message has its words in every form."""
    said = message.string
    return bool(said) if isinstance(said, str) else bool(said) and all(said or ())


class _Marked(NullTranslations):
    """English, each message that is in the tables between marks."""

    def __init__(self) -> None:
        super().__init__()
        self._known: set[tuple[str | None, str]] = set()
        for message in catalog(TEMPLATE):
            ids = (message.id,) if isinstance(message.id, str) else message.id
            self._known |= {(message.context, one) for one in ids}

    def gettext(self, message: str) -> str:
        return self._marked(None, message)

    def ngettext(self, msgid1: str, msgid2: str, n: int) -> str:
        return self._marked(None, msgid1 if n == 1 else msgid2)

    def pgettext(self, context: str, message: str) -> str:
        return self._marked(context, message)

    def npgettext(self, context: str, msgid1: str, msgid2: str, n: int) -> str:
        return self._marked(context, msgid1 if n == 1 else msgid2)

    def _marked(self, context: str | None, message: str) -> str:
        return f"{OPENED}{message}{CLOSED}" if (context, message) in self._known else message
