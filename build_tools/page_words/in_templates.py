"""What Jinja's `_()`, `{% trans %}` and `pgettext()` ask; it fills in the places, `%(name)s`."""

from __future__ import annotations

from build_tools.page_words.speaking import table


def in_template(message: str) -> str:
    """The message in the language spoken, its places still open."""
    words = table()
    return message if words is None else words.gettext(message)


def many_in_template(one: str, many: str, number: int) -> str:
    """The message for this number of things, its places still open."""
    words = table()
    if words is None:
        return one if number == 1 else many
    return words.ngettext(one, many, number)


def in_template_meaning(context: str, message: str) -> str:
    """The message in one of its meanings, its places still open."""
    words = table()
    return message if words is None else words.pgettext(context, message)
