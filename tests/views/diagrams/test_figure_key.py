"""The key tells every mark that figures have, and draws it as they do."""

from __future__ import annotations

import re

from build_tools.views.diagrams.body_arrows import stroke
from build_tools.views.diagrams.body_phrases import WAYS
from build_tools.views.diagrams.figure_key import figure_key


def test_each_feel_has_its_own_mark_in_the_key_but_the_one_that_has_none() -> None:
    """Direct is how a move goes that is none of the others."""
    key = {mark.title: mark.svg for mark in figure_key()}
    plain = stroke([(5, 15), (42, 15)], ())
    assert all(plain not in svg for svg in key.values())
    assert len(set(key.values())) == len(key)
    for feel, words in WAYS.items():
        assert (words in key) == (feel != "direct")
    assert "stroke-dasharray" in key["slowly and evenly"]


def test_the_key_says_from_where_a_body_is_seen() -> None:
    (said,) = (mark for mark in figure_key() if "behind" in mark.title)
    heads = re.findall(r'class="(?:e)"', said.svg)
    assert heads
    assert said.svg.count("h0M42") == 1
