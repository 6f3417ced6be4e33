"""Letters of sections, changed returns among them."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from build_tools.movement import forms
from build_tools.movement.letters import all_unmarked, is_changed, slug, straight, unmarked
from build_tools.movement.orders import order_in

LETTERS = st.sampled_from([f"{letter}{mark}" for letter in "ABCD" for mark in ("", "'")])
FORMS = st.lists(LETTERS, min_size=1, max_size=11)


def test_a_letter_and_its_return() -> None:
    assert (unmarked("A'"), unmarked("A")) == ("A", "A")
    assert is_changed("A'")
    assert not is_changed("A")
    assert (slug("A"), slug("A'")) == ("a", "a-changed")
    assert straight("A’") == straight("A′") == "A'"


@given(FORMS)
def test_a_form_is_what_it_is_without_its_marks(form: list[str]) -> None:
    plain = all_unmarked(form)
    for asked in (
        forms.is_binary, forms.is_ternary, forms.is_rondo, forms.is_palindrome,
        forms.is_cumulative, forms.returns_to_start,
    ):  # fmt: skip
        assert asked(form) == asked(plain)
    assert forms.name(form).startswith(forms.name(plain))
    assert ("changed" in forms.name(form)) == (tuple(form) != plain)


def test_forms_say_what_comes_back_changed() -> None:
    assert forms.name(["A", "B", "A'"]) == "there and back (ternary); A comes back changed"
    assert forms.name(["A", "B", "A'", "C", "A"]).startswith(
        "coming back between every two (rondo)"
    )
    assert forms.name(["A", "B", "C", "B'", "A'"]).endswith("; A and B come back changed")


def test_orders_are_read_with_their_marks() -> None:
    assert order_in("A, C, B, A’: the tide comes twice") == ("A", "C", "B", "A'")
    assert order_in("A then B then A'") == ("A", "B", "A'")
