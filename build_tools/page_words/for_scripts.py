"""What the scripts of a page say in another language, as a script: pages of a folder load no data.

It lies beside the pages of a unit in that language, and no other page loads it. Its plural rule is
that of the table, which is written as C and is JavaScript as well.
"""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

from build_tools.page_words.speaking import spoken
from build_tools.page_words.tables import ENGLISH, PSEUDO, catalog, table_file, translated

if TYPE_CHECKING:
    from babel.messages.catalog import Message

SCRIPT = "page-words.js"


def words_script() -> str | None:
    """Where a unit's page finds the words of its scripts; None in English, which they hold."""
    return None if spoken() in (ENGLISH, PSEUDO) else SCRIPT


def script_words() -> bytes:
    """That script, of the language spoken."""
    table = catalog(table_file(spoken()))
    said = {
        _known_by(message): _said(message)
        for message in table
        if message.id and translated(message) and _in_a_script(message)
    }
    words = json.dumps(said, ensure_ascii=False, sort_keys=True)
    return (
        "(window.danceUnitBank ||= {}).pageWords = "
        f"{{ form: (n) => Number({table.plural_expr}), said: {words} }};\n"
    ).encode()


def _in_a_script(message: Message) -> bool:
    return any(place.endswith(".js") for place, _line in message.locations)


def _known_by(message: Message) -> str:
    return message.id if isinstance(message.id, str) else message.id[0]


def _said(message: Message) -> list[str]:
    said = message.string
    return [said] if isinstance(said, str) else list(said or ())
