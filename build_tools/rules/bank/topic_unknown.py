"""Each topic of a unit is one of the bank's topics.

Teachers find a unit by its topics and the words listed beside them. A topic that the list does not
have finds nothing.

Bad:
    topics: [river]
Good:
    topics: [rivers]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.bank import BankOutline
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each topic that is not in `vocabulary/topics.yml`."""
    near_words = {word.lower(): topic.name for topic in bank.topics.values() for word in topic.also}
    for unit in bank.units:
        for n, topic in enumerate(unit.topics):
            if topic in bank.topics:
                continue
            near = near_words.get(topic.replace("-", " ")) or nearest(topic, bank.topics)
            yield Finding(
                unit.file,
                ("topics", n),
                f"`{topic}` is not in `vocabulary/topics.yml`, which lists "
                f"{how_many(len(bank.topics), 'topic')}",
                f"did you mean `{near}`?"
                if near
                else "use a topic from that list, which the page on how to write a unit prints, or "
                "add this one to it with its near words",
            )
