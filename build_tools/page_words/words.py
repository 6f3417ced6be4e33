"""How a word of a page is asked for in Python: the names of GNU gettext, which its tools know.

A message is a whole pattern, with named places: `_("Lesson {number} of {many}", number=2, many=6)`.
It is never put together from bits, since another language puts them in another order.
"""

from __future__ import annotations

from build_tools.page_words.speaking import table
from build_tools.page_words.tables import SCHEMA


def gettext(message: str, /, **places: object) -> str:
    """The message in the language spoken, its places filled in; called `_`."""
    words = table()
    said = message if words is None else words.gettext(message)
    return said.format(**places) if places else said


_ = gettext


def ngettext(one: str, many: str, number: int, /, **places: object) -> str:
    """The message for this number of things; `{number}` in it is the number itself.

    Where what is counted is no whole number, `number` picks the form and a place says it.
    """
    words = table()
    said = (one if number == 1 else many) if words is None else words.ngettext(one, many, number)
    return said.format(**{"number": number, **places})


def pgettext(context: str, message: str, /, **places: object) -> str:
    """The same where one English word means two things: `context` says which, to translators."""
    words = table()
    said = message if words is None else words.pgettext(context, message)
    return said.format(**places) if places else said


def of_schema(word: str) -> str:
    """A word that the schema lists, as pages show it: low, forwards, circle, change of speed.

    The table has every word of such lists under the meaning `schema`; any other word, as an
    author's part of the body, stays as it is.
    """
    return pgettext(SCHEMA, word)


def N_(message: str) -> str:  # noqa: N802 - its name wherever gettext is used
    """The same message: it stands in a list, and is asked for with `_` when it is shown.

    Without it the message would not be found for the table, since `_` of a name says no words.
    """
    return message


def NN_(one: str, many: str) -> tuple[str, str]:  # noqa: N802 - after N_
    """Both messages of a thing that is counted, which stand in a list, for `ngettext(*both, n)`."""
    return one, many
