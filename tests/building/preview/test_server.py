"""What the open pages are told: the problems and a number, as a script that nothing can end."""

from __future__ import annotations

import json

from build_tools.building.preview.server import State


def test_the_state_cannot_end_the_script_it_stands_in() -> None:
    state_of_pages = State()
    state_of_pages.say('a "quote" </script> \u2028 é')
    text = state_of_pages.script().decode("ascii")
    assert "\u2028" not in text
    assert json.loads(text.removeprefix("window.bankPreview(").removesuffix(");")) == {
        "number": 0,
        "problems": 'a "quote" </script> \u2028 é',
    }
