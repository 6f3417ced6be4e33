"""The list for who signs: what was read at which edition."""

from __future__ import annotations

from dataclasses import replace

import yaml

from build_tools.model.unit import Reading
from build_tools.pages.assess.assess import assess_page
from build_tools.pages.before_you_sign.before_you_sign import SignView, sign_page
from build_tools.schema_check.check import check_document
from build_tools.source.front_matter import Document, read_markdown
from build_tools.views.words.signing import ASPECTS
from tests.pages.test_contexts import environment
from tests.support.banks import CONTENT
from tests.support.sound_bank import real_bank, real_unit

READ = replace(
    real_unit(),
    edition="3.0.0",
    read_by=(
        Reading("dance adviser", "2.1.0", "2026-09-01", ("truth", "choices"), "A longer end"),
        Reading("class teacher", "3.0.0", "2026-10-01", ("truth",), None),
    ),
)


def view() -> SignView:
    context = sign_page(real_bank(), READ).context
    assert isinstance(context, SignView)
    return context


def html() -> str:
    return environment().get_template("before_you_sign/before_you_sign.html").render(view=view())


def test_each_question_says_who_has_read_for_it() -> None:
    read = {one.name: seen.read for one, seen in zip(ASPECTS, view().aspects, strict=True)}
    assert read["truth"] == (
        "Dance adviser, at 2.1.0; this is 3.0.0",
        "Class teacher, at this edition",
    )
    assert read["choices"] == ("Dance adviser, at 2.1.0; this is 3.0.0",)
    assert read["watching"] == ()
    assert "Read: Class teacher, at this edition." in html()


def test_plan_and_assess_says_who_read_it_and_leads_to_the_list() -> None:
    page = assess_page(real_bank(), READ)
    shown = environment().get_template(page.template).render(view=page.context)
    assert "Read at 2.1.0; this is 3.0.0. What they found: A longer end." in shown
    assert 'href="sign.html"' in shown


def test_the_lines_to_keep_are_sound_in_a_unit() -> None:
    """PyYAML reads them as they are shown."""
    example = view().lines
    assert [one["role"] for one in yaml.safe_load(example)["read_by"]] == [
        "dance adviser of a county service"
    ]
    unit = CONTENT / "units" / "rock-pool" / "unit.md"
    raw = unit.read_text(encoding="utf-8").replace("\nstimulus:", f"\n{example}stimulus:", 1)
    document = read_markdown("units/rock-pool/unit.md", raw.encode())
    assert isinstance(document, Document)
    assert document.data["read_by"][0]["for"] == ["truth", "choices", "watching"]
    assert check_document(document, "unit") == []
