"""Questions: closed or open, judging or describing, looking back or on."""

from __future__ import annotations

import pytest

from build_tools.model.lesson import Question
from build_tools.sentences.asking import asks_where_to_next, is_closed
from build_tools.views.written.questions import judges, looks_back


def question(text: str, back_to: int | None = None) -> Question:
    return Question(text, (), back_to)


@pytest.mark.parametrize(
    "text",
    [
        "Did it work?",
        "Were you still when the drum stopped?",
        "When the drum stopped, did you stop?",
        "Isn't it slower now?",
        "Could the end be slower?",
    ],
)
def test_yes_or_no_answers_a_closed_question(text: str) -> None:
    assert is_closed(text)


@pytest.mark.parametrize(
    "text",
    [
        "What did you see?",
        "Did it work, and why?",
        "Next time, what would help?",
        "Can you show me the sharpest fold?",
        "When did the second start?",
        "Sharp or soft?",
    ],
)
def test_an_open_question_asks_for_more(text: str) -> None:
    assert not is_closed(text)


# Lerman and Borstel, 2003: a question with a judgement in it is not neutral
@pytest.mark.parametrize(
    "text",
    ["Which group was best?", "Did you like the end?", "What went wrong?", "How good was it?"],
)
def test_judging(text: str) -> None:
    assert judges(question(text))


@pytest.mark.parametrize(
    "one",
    [
        question("What did you see first?"),
        question("What did you notice that was best?"),
        question("How was the spin not like the float?"),
        question("What in the storm is better than in lesson 4?", 4),
        question("What is better than last time?"),
        question("What ideas guided your choices about lighting?"),
    ],
)
def test_describing_comparing_and_asking_neutrally_do_not_judge(one: Question) -> None:
    assert not judges(one)


# Department for Education, National curriculum in England: physical education, 2013: "compare
# their performances with previous ones"
def test_looking_back_is_said_by_field_or_in_words() -> None:
    assert looks_back(question("What is clearer?", 1))
    assert looks_back(question("What is clearer than last week?"))
    assert not looks_back(question("What is clear?"))


# Hattie and Timperley, The Power of Feedback, 2007: where to next
def test_where_to_next() -> None:
    assert asks_where_to_next("Next time, what would help?")
    assert asks_where_to_next("Which join needs mending? What will you keep?")
    assert not asks_where_to_next("How many folds did you see?")
