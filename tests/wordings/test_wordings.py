"""The rules that read sentences know their faults, over wordings by people who had not read them.

Goals: see `GOALS`. A rule of grade error that reads sentences is nearly never wrong about them.
"""

from __future__ import annotations

import pytest

from tests.wordings.lists import Wordings, all_wordings, faults_of_shape

EVERY_LIST = pytest.mark.parametrize("wordings", all_wordings(), ids=lambda w: w.name)


@EVERY_LIST
def test_has_texts_of_both_kinds(wordings: Wordings) -> None:
    assert len(set(wordings.faulty)) >= 10
    assert len(set(wordings.sound)) >= 10
    assert not set(wordings.faulty) & set(wordings.sound)


@EVERY_LIST
def test_texts_fit_the_schemas_in_their_setting(wordings: Wordings) -> None:
    for text in (*wordings.faulty, *wordings.sound):
        assert list(faults_of_shape(wordings, text)) == []
