"""What is looked for in the sentences of many texts is what each text says by itself."""

from __future__ import annotations

import pytest

from build_tools.sentences.many_sentences import ManySentences
from build_tools.sentences.many_texts import numbers_of
from build_tools.sentences.plain import plain_words
from build_tools.sentences.ranking import RANKED
from build_tools.sentences.rights import AUDIENCE
from build_tools.sentences.sayings import Saying
from build_tools.sentences.touch import TOUCH
from tests.wordings.lists import all_wordings

ODD = ("", "No stop. 3.5 metres. Stop!", "…and wait\n- Hold hands", "One. Two? Three")
TEXTS = [*ODD, *(text for w in all_wordings() for text in (*w.faulty, *w.sound))]


@pytest.mark.parametrize(
    "what", [TOUCH, RANKED, AUDIENCE, Saying("# metre")], ids=["touch", "ranked", "who", "number"]
)
def test_a_sentence_says_what_its_text_says(what: Saying) -> None:
    sentences = ManySentences(TEXTS)
    found = sentences.that_may_say(what, sentences.every)
    assert {number for number, one in found if what.said(one)} == {
        number for number, text in enumerate(TEXTS) if what.said(text)
    }


def test_only_sentences_of_the_texts_asked_for_are_looked_at() -> None:
    sentences = ManySentences(["Hold hands. Run.", "Walk.", "Hold hands."])
    found = sentences.that_may_say(Saying("hold ~1 hand"), sentences.of_texts([1, 2]))
    assert list(found) == [(2, "Hold hands")]


def test_texts_with_a_word_are_known_by_their_numbers() -> None:
    sentences = ManySentences(TEXTS)
    for words in (["hands"], ["metres", "two"], ["no-such-word"]):
        assert numbers_of(sentences.texts_with(words)) == [
            number for number, text in enumerate(TEXTS) if not plain_words(text).isdisjoint(words)
        ]
