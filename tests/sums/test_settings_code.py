"""The short code of a teacher's settings, as the page's own script writes and reads it."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.support.page_script import ask

CODES = (
    "38-7-25-2-half",
    "45-0-30-0-full",
    "1-0-1-0-unknown",
    "240-239-120-120-classroom",
    "50-5-27-1-12x8m",
    "50-5-27-1-14x9s",
    "50-5-27-1-99x99m",
)
NO_CODES = (
    "",
    "38",
    "38-7-25-2",
    "38-7-25-2-",
    "38-7-25-2-hall",
    "38-38-25-2-half",
    "0-0-25-2-half",
    "241-7-25-2-half",
    "38-7-0-2-half",
    "38-7-121-0-half",
    "38-7-25-121-half",
    "038-7-25-2-half",
    "38-7-25-2-half ",
    " 38-7-25-2-half",
    "38-7-25-2-half\n",
    "-38-7-25-2-half",
    "3.5-1-25-2-half",
    "38-7-25-2-0x8m",
    "38-7-25-2-12x8",
    "38-7-25-2-HALF",
    "38-7-25-2-half-2",
    "٣٨-7-25-2-half",
    "38-7-25-2-100x8m",
    "1e1-7-25-2-half",
    "38--7-25-2-half",
)
Settings = dict[str, Any]


def settings_code(settings: Settings) -> str | None:
    found: str | None = ask("settings.code", settings)
    return found


def settings_from(code: str) -> Settings | None:
    found: Settings | None = ask("settings.fromCode", code)
    return found


def settings_of(available: int, changing: int, dancing: int, watching: int, space: str) -> Settings:
    return {
        "available": available,
        "changing": changing,
        "dancing": dancing,
        "watching": watching,
        "space": space,
    }


@st.composite
def any_settings(draw: st.DrawFn) -> Settings:
    available = draw(st.integers(1, 240))
    side = st.integers(1, 99)
    paced = st.builds("{}x{}{}".format, side, side, st.sampled_from("ms"))
    return settings_of(
        available,
        draw(st.integers(0, available - 1)),
        draw(st.integers(1, 120)),
        draw(st.integers(0, 120)),
        draw(st.one_of(st.sampled_from(("full", "half", "classroom", "unknown")), paced)),
    )


@given(any_settings())
def test_a_code_gives_back_its_settings(settings: Settings) -> None:
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
    assert settings_code(settings_of(30, 30, 25, 0, "half")) is None
    assert settings_code(settings_of(30, 3, 25, 0, "a barn")) is None
    assert settings_code({**settings_of(30, 3, 25, 0, "half"), "dancing": 2.5}) is None
