"""The saved sound and MIDI files of the page of counts, each heard or read by others' software.

Sources: Ellis 2007, Beat tracking by dynamic programming (librosa's tracker); Standard MIDI Files
1.0, 1988: tempo is microseconds for a quarter note, and a tick is that over the division.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import mido  # type: ignore[import-untyped]
import numpy as np
import pytest
from playwright.sync_api import Browser

from build_tools.movement.whole import counts_in_order
from build_tools.views.dance.timeline import section_sounding, span_seconds
from tests.support.browser import Reader, address_of, reader
from tests.support.sound import heard, off_schedule, onsets, pulse, tracked_tempo
from tests.support.sound_bank import real_unit

PAGE = f"units/{real_unit().slug}/counts.html"
COUNT_IN = 4
TEMPI = (72, 88, 108, 132, 156)
LEAST_TEMPO_ERROR = 0.01
MOST_APART = 0.010
DRUMS = 9  # channel 10, counted from 0


@pytest.fixture(scope="module")
def at(browser: Browser, site: Path) -> Iterator[Reader]:
    with reader(browser, site) as found:
        found.page.goto(address_of(site, PAGE))
        yield found


def saved(at: Reader, folder: Path, button: str, choice: str, tempo: int) -> Path:
    """What is chosen, saved by a click as a teacher does, at a tempo the buttons reach."""
    at.page.select_option("#counts-choice", label=choice)
    written = real_unit().dance.tempo
    assert written is not None
    back = at.page.locator("[data-usual]")
    if back.is_visible():
        back.click()
    name = "Slower" if tempo < written else "Faster"
    for _ in range(abs(tempo - written) // 4):
        at.page.get_by_role("button", name=name).click()
    with at.page.expect_download() as download:
        at.page.get_by_role("button", name=button).click()
    file = folder / download.value.suggested_filename
    download.value.save_as(file)
    assert file.name.endswith(f"-{tempo}{file.suffix}")
    return file


@pytest.mark.parametrize(
    "tempo",
    [
        pytest.param(tempo, marks=pytest.mark.thorough if number % 2 else ())
        for number, tempo in enumerate(TEMPI)
    ],
)
def test_the_sound_file_has_its_tempo_and_every_stroke_in_its_place(
    at: Reader, tmp_path: Path, tempo: int, thorough: bool
) -> None:
    counts = real_unit().dance.sections["A"].counts
    samples, rate = heard(
        saved(at, tmp_path, "Save as a sound file", "Section A: tide goes out", tempo)
    )
    beats = COUNT_IN + int(counts or 0)
    assert abs(len(samples) / rate - beats * 60 / tempo) < 1 / rate
    assert np.abs(samples).max() < 1
    assert abs(pulse(samples, rate, tempo) / tempo - 1) < LEAST_TEMPO_ERROR
    if thorough:
        assert abs(tracked_tempo(samples, rate) / tempo - 1) < LEAST_TEMPO_ERROR
    apart = off_schedule(onsets(samples, rate), np.arange(beats) * 60 / tempo)
    assert np.abs(apart).max() < MOST_APART


def test_the_first_of_each_phrase_is_louder(at: Reader, tmp_path: Path) -> None:
    samples, rate = heard(
        saved(at, tmp_path, "Save as a sound file", "Section A: tide goes out", 108)
    )
    beat = 60 / 108
    loud = []
    for k in range(COUNT_IN, COUNT_IN + 32):
        start = round(k * beat * rate)
        loud.append(float(np.sqrt(np.mean(samples[start : start + rate // 4] ** 2))))
    phrase = real_unit().dance.phrase
    firsts, others = loud[::phrase], [x for n, x in enumerate(loud) if n % phrase]
    assert min(firsts) > 1.5 * max(others)


def test_these_measures_notice_a_late_stroke_and_another_tempo(at: Reader, tmp_path: Path) -> None:
    samples, rate = heard(
        saved(at, tmp_path, "Save as a sound file", "Section A: tide goes out", 108)
    )
    due = np.arange(36) * 60 / 108
    late = samples.copy()
    start, end = (round(k * 60 / 108 * rate) for k in (20, 21))
    late[start:end] = np.roll(samples[start:end], round(0.015 * rate))
    assert np.abs(off_schedule(onsets(late, rate), due)).max() > MOST_APART
    assert abs(pulse(samples, round(rate * 1.015), 108) / 108 - 1) > LEAST_TEMPO_ERROR


@pytest.mark.parametrize("tempo", [96, 108, 132])
def test_a_midi_file_has_tempo_and_length_by_its_standard(
    at: Reader, tmp_path: Path, tempo: int
) -> None:
    counts = real_unit().dance.sections["A"].counts
    file = mido.MidiFile(saved(at, tmp_path, "Save as notes", "Section A: tide goes out", tempo))
    assert (file.type, len(file.tracks)) == (0, 1)
    (micros,) = (m.tempo for m in file.tracks[0] if m.type == "set_tempo")
    assert micros == round(60_000_000 / tempo)
    beats = COUNT_IN + int(counts or 0)
    assert sum(m.time for m in file.tracks[0]) == beats * file.ticks_per_beat
    assert file.length == pytest.approx(beats * micros / 1e6, abs=1e-6)
    now, strokes = 0, []
    for message in file.tracks[0]:
        now += message.time
        if message.type == "note_on":
            assert message.channel == DRUMS
            strokes.append((now / file.ticks_per_beat, message.velocity))
    assert [beat for beat, _ in strokes] == list(range(beats))
    phrase = real_unit().dance.phrase
    loudest = max(loud for _, loud in strokes)
    assert [b for b, loud in strokes if loud == loudest] == list(range(COUNT_IN, beats, phrase))


def test_the_whole_dance_as_midi_says_its_sections_and_gives_the_storm_its_seconds(
    at: Reader, tmp_path: Path
) -> None:
    dance = real_unit().dance
    file = mido.MidiFile(saved(at, tmp_path, "Save as notes", "The whole dance", 108))
    storm = dance.sections["D"]
    seconds = span_seconds(storm, section_sounding(dance, storm))
    # the join after the storm gives time to come back to the beat, so there is one count-in
    lasts = (COUNT_IN + counts_in_order(dance)) * 60 / 108 + seconds
    assert file.length == pytest.approx(float(lasts), abs=0.01)
    marks = [m.text for m in file.tracks[0] if m.type == "marker"]
    letters = [
        mark.split(":")[0].removeprefix("Section ") for mark in marks if mark.startswith("Section ")
    ]
    assert letters == list(dance.form)
    assert len(marks) == len(dance.form) + len(dance.transitions)
    told = at.page.locator("[data-saved]").inner_text()
    assert f"{float(seconds):g} seconds" in told
    assert "Section D" in told


def test_saving_asks_for_nothing_and_breaks_no_rule(at: Reader) -> None:
    assert at.violations() == []
    assert at.said == []
    assert all(address.startswith(("file:", "blob:")) for address in at.requests)
