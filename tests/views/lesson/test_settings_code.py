"""The short code of a teacher's settings."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.lesson.settings_code import FitSettings, settings_code, settings_from
from tests.vectors.make_vectors import CODES, NO_CODES


@st.composite
def any_settings(draw: st.DrawFn) -> FitSettings:
    available = draw(st.integers(1, 240))
    side = st.integers(1, 99)
    paced = st.builds("{}x{}{}".format, side, side, st.sampled_from("ms"))
    return FitSettings(
        available,
        draw(st.integers(0, available - 1)),
        draw(st.integers(1, 120)),
        draw(st.integers(0, 120)),
        draw(st.one_of(st.sampled_from(("full", "half", "classroom", "unknown")), paced)),
    )


@given(any_settings())
def test_a_code_gives_back_its_settings(settings: FitSettings) -> None:
    code = settings_code(settings)
    assert code is not None
    assert settings_from(code) == settings


@given(st.text())
def test_what_is_read_is_written_the_same(text: str) -> None:
    found = settings_from(text)
    assert found is None or settings_code(found) == text


@pytest.mark.parametrize("code", CODES)
def test_codes(code: str) -> None:
    found = settings_from(code)
    assert found is not None
    assert settings_code(found) == code


@pytest.mark.parametrize("text", NO_CODES)
def test_nonsense_is_no_code(text: str) -> None:
    assert settings_from(text) is None


def test_settings_out_of_range_have_no_code() -> None:
    assert settings_code(FitSettings(30, 30, 25, 0, "half")) is None
    assert settings_code(FitSettings(30, 3, 25, 0, "a barn")) is None
