"""Topics in words, with a capital where a topic is a proper name."""

from __future__ import annotations

import re
from collections.abc import Sequence

from build_tools.model.bank import Bank
from build_tools.views.words.plain_words import listed, name_in_words
from build_tools.views.words.punctuation import capital


def topics_in_words(bank: Bank, topics: Sequence[str]) -> str:
    """Topics as a list with a capital at its start: Textiles, industry and Victorians."""
    return capital(listed([_topic(bank, topic) for topic in topics]))


def _topic(bank: Bank, topic: str) -> str:
    """A topic in words, with a capital where its near words show that it is a proper name."""
    near = bank.topics[topic].also if topic in bank.topics else ()
    plain = name_in_words(topic)
    for words in near:
        if words.casefold().startswith(plain):
            return words[: len(plain)]
    written = [word for words in near for word in re.findall(r"\w+", words)]
    found = []
    for word in plain.split():
        same = [one for one in written if one.casefold().rstrip("s") == word.rstrip("s")]
        found.append(capital(word) if same and all(one[:1].isupper() for one in same) else word)
    return " ".join(found)
