"""Words in tasks and questions of which rules ask more than whether they are there."""

from __future__ import annotations

import pytest

from build_tools.sentences.asking import is_closed
from build_tools.sentences.explained import explains, in_another_sense
from build_tools.sentences.forms_named import letters_said, parts_said
from build_tools.sentences.grouping_sizes import other_groupings
from build_tools.sentences.kinds_of_move import kinds_moved
from build_tools.sentences.left_out import left_out
from build_tools.sentences.own_names import danced_by_name, holds_word


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("Walk, then hop.", {"travel", "jump"}),
        ("Roll your wrists.", {"gesture"}),
        ("Sit and reach, then jump.", {"gesture", "jump"}),
        ("Talk about running.", set()),
        ("Draw a jump.", set()),
        ("Do not run.", set()),
    ],
)
def test_kinds_of_move(text: str, kinds: set[str]) -> None:
    assert kinds_moved(text) == kinds


def test_a_word_is_explained_beside_it_or_in_the_next_sentence() -> None:
    assert explains("Canon means one after another.", "canon")
    assert explains("Dance it in canon: one starts, the next follows.", "canon")
    assert explains("Chassé to the corner. One foot chases the other.", "chasse")
    assert not explains("Now dance it in canon. Go!", "canon")
    assert not explains("Now dance.", "canon")
    assert in_another_sense("The canon of the cathedral came.", "canon")
    assert not in_another_sense("Dance a canon.", "canon")


def test_groupings_that_words_lead_to() -> None:
    assert other_groupings("Turn to the nearest person.", "fours") == ("pairs",)
    assert other_groupings("Two pairs make a four.", "fours") == ()
    assert other_groupings("Two pairs make a four. One over joins a three.", "fours") == ()
    assert other_groupings("Find your row.", "fours") == ()


def test_letters_and_parts_of_a_form() -> None:
    assert letters_said("An A B A dance") == ("A", "B", "A")
    assert letters_said("ABACA, a rondo") == ("A", "B", "A", "C", "A")
    assert letters_said("not A B A") == ()
    assert letters_said("A BAD DAY") == ()
    assert parts_said("A three-part dance") == 3
    assert parts_said("Three parts of a plant") is None


def test_what_is_left_out_stands_beside_it() -> None:
    assert left_out("Leave the stone out.", "stone", False)
    assert left_out("It is not in the dance.", "stone", True)
    assert not left_out("It is not in the dance.", "stone", False)
    assert not left_out("Put the drum aside and dance the stone.", "stone", False)


def test_a_name_is_more_than_its_word() -> None:
    assert danced_by_name("Dance the ember.", "ember") == "ember"
    assert danced_by_name("Dance like the ember.", "ember") is None
    assert danced_by_name("Next week we dance the ember.", "ember") is None
    assert holds_word("Leave the stone out", "stone")
    assert not holds_word("stones stay", "stone")


def test_a_question_inside_another_leaves_it_closed() -> None:
    assert is_closed("Could you tell which dancer led?")
    assert not is_closed("In which corner did it start?")
