"""A picture dropped on a page: known by its bytes, made fit, told of, put in, and undone."""

from __future__ import annotations

import base64
import io
import json
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import FileChooser, Locator, Page, expect

from build_tools.building.preview.dropped import Dropped, as_dropped, free_name
from build_tools.building.preview.pictures import TOO_LARGE
from build_tools.building.preview.server import Preview
from build_tools.checking.check_bank import check_folder
from build_tools.pictures.limits import MOST_PHOTOGRAPH
from build_tools.pictures.trouble import PictureError
from tests.building.preview.asking import FILE, UNIT, post, sent
from tests.support.banks import BASE, BASE_UNIT, change

HEIC = Path(__file__).parents[2] / "pictures" / "heic" / "sideways.heic"
SECRET = "taken in Hall Street"
ORIENTATION, DESCRIPTION = 0x0112, 0x010E
"""Exif 2.32 (CIPA DC-008), tags 274 and 270."""
TOLD = {
    "What it shows, in words": "A paper boat on a stream, a stone in front of it.",
    "Its title": "Boat and stone",
    "Who made it": "The dance unit bank",
    "Where it comes from": "Photographed for this unit",
}
ENTRY = """pictures:
  - title: Boat and stone
    by: The dance unit bank
    licence: CC-BY-4.0
    source: Photographed for this unit
    file: media/{name}
    text_version: A paper boat on a stream, a stone in front of it.
"""


def photograph(kind: str = "JPEG", *, side: int = 60) -> bytes:
    """Red above and blue below as it is seen, but kept on its side, with words in its data."""
    seen = Image.new("RGB", (side, 2 * side), (254, 0, 0))
    seen.paste((0, 0, 254), (0, side, side, 2 * side))
    exif = Image.Exif()
    exif[ORIENTATION], exif[DESCRIPTION] = 6, SECRET
    made = io.BytesIO()
    seen.transpose(Image.Transpose.ROTATE_90).save(made, kind, exif=exif)
    return made.getvalue()


def is_upright_and_bare(data: bytes) -> bool:
    with Image.open(io.BytesIO(data)) as picture:
        width, height = picture.size
        above, below = (picture.convert("RGB").getpixel((width // 2, y)) for y in (5, height - 5))
        assert isinstance(above, tuple)
        assert isinstance(below, tuple)
        right_way = height > width and above[0] > 200 and below[2] > 200
        return right_way and not picture.getexif() and SECRET.encode() not in data


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_a_photograph_is_known_by_its_bytes_turned_and_bared(kind: str) -> None:
    made = as_dropped("boat.txt", photograph(kind))
    assert made.kind == {"JPEG": "jpg"}.get(kind, kind.lower())
    assert is_upright_and_bare(made.data)
    assert "turned upright" in made.done


def test_a_photograph_of_a_telephone_becomes_a_jpeg() -> None:
    made = as_dropped("IMG_0001.HEIC", HEIC.read_bytes())
    assert made.kind == "jpg"
    assert is_upright_and_bare(made.data)
    assert made.done[0] == "as a JPEG, which every browser shows"


def test_a_large_photograph_is_shrunk() -> None:
    noise = Image.effect_noise((1900, 1500), 90)
    made = io.BytesIO()
    noise.convert("RGB").save(made, "JPEG", quality=90)
    assert len(made.getvalue()) > MOST_PHOTOGRAPH
    small = as_dropped("noise.jpg", made.getvalue())
    assert len(small.data) <= MOST_PHOTOGRAPH
    assert any(one.startswith("in ") and "here it has" in one for one in small.done)


def test_a_drawing_is_written_anew_of_what_may_be_published() -> None:
    drawing = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h7"/></svg>'
    assert as_dropped("a.svg", drawing).kind == "svg"
    with pytest.raises(PictureError):
        as_dropped("a.svg", drawing.replace(b"<path", b"<script>alert(1)</script><path"))


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"GIF89a" + bytes(20), "GIF"),
        (b"II*\0" + bytes(20), "TIFF"),
        (b"BM" + bytes(20), "bitmap"),
        (b"\0\0\0\x20ftypavif" + bytes(20), "AVIF"),
        (b"\0\0\0\x20ftypisom" + bytes(20), "film"),
        (b"%PDF-1.7", "PDF"),
        (b"PK\3\4" + bytes(20), "document"),
        (b"<html><script>alert(1)</script>", "no picture"),
        (b"", "no picture"),
        (b"words", "no picture"),
        (photograph()[:200], "damaged"),
    ],
)
def test_what_is_no_picture_says_what_it_is_and_what_to_do(data: bytes, said: str) -> None:
    with pytest.raises(PictureError) as refused:
        as_dropped("boat.jpg", data)
    assert said in refused.value.why
    assert "save" in refused.value.why


@pytest.mark.parametrize(
    ("named", "title", "taken", "called"),
    [
        ("Boat at Noon", "The boat", (), "boat-at-noon.jpg"),
        ("IMG_2041", "Boat and stone", (), "boat-and-stone.jpg"),
        ("20261129_101500", "Boat and stone", (), "boat-and-stone.jpg"),
        ("WhatsApp Image 2026-11-29", "Boat", (), "boat.jpg"),
        ("été", "A boat", (), "ete.jpg"),
        ("船", "A boat", (), "a-boat.jpg"),
        ("船", "石", (), "picture.jpg"),
        ("boat", "A boat", ("boat.jpg",), "boat-2.jpg"),
        ("boat", "A boat", ("boat.jpg", "boat-2.jpg"), "boat-3.jpg"),
        ("y" * 90, "A boat", (), "y" * 44 + ".jpg"),
    ],
)
def test_it_gets_a_sensible_name_that_no_other_has(
    named: str, title: str, taken: tuple[str, ...], called: str
) -> None:
    assert free_name(Dropped("jpg", named, b"", ()), title, taken) == called


def media(bank: Path) -> Path:
    return bank / "units" / BASE_UNIT / "media"


def new_pictures(bank: Path) -> set[str]:
    """The pictures in the unit's folder that were not there before."""
    return {one.name for one in media(bank).iterdir()} - {one.name for one in media(BASE).iterdir()}


def test_too_large_a_picture_is_refused_before_it_is_read(preview: Preview) -> None:
    name = f"preview-picture/{FILE}/boat.jpg"
    status, said = sent(preview, name, b"", Content_Length="20000001", Content_Type=BYTES)
    assert status == 413
    assert TOO_LARGE in said


BYTES = "application/octet-stream"


@pytest.mark.parametrize(
    "file", ["bank.yml", "units/../bank.yml", "units/nowhere/unit.md", f"units/{BASE_UNIT}"]
)
def test_a_picture_goes_into_a_unit_alone(preview: Preview, bank: Path, file: str) -> None:
    name = f"preview-picture/{file}/boat.jpg"
    assert sent(preview, name, photograph(), Content_Type=BYTES)[0] in (400, 422)
    assert new_pictures(bank) == set()


def dropped(preview: Preview, file: str = FILE) -> str:
    """The key of a picture that was dropped on the page of a file."""
    name = f"preview-picture/{file}/boat.jpg"
    status, answer = sent(preview, name, photograph(), Content_Type=BYTES)
    assert status == 200, answer
    return str(json.loads(answer)["key"])


SAID = {
    "title": "Boat",
    "by": "A",
    "licence": "CC-BY-4.0",
    "source": "B",
    "text_version": "A boat.",
}


@pytest.mark.parametrize(
    "told",
    [
        {},
        {name: text for name, text in SAID.items() if name != "text_version"},
        {**SAID, "text_version": " "},
        {**SAID, "file": "media/other.jpg"},
        {**SAID, "shared": "boat"},
        {**SAID, "licence": "mine"},
        {**SAID, "title": "a" * 500},
        [],
    ],
)
def test_nothing_is_put_in_before_all_is_told(preview: Preview, bank: Path, told: object) -> None:
    before = (bank / FILE).read_bytes()
    asked = {"file": FILE, "key": dropped(preview), "told": told}
    assert post(preview, "preview-enter", asked)[0] == 422
    assert (bank / FILE).read_bytes() == before
    assert new_pictures(bank) == set()
    assert post(preview, "preview-enter", {**asked, "told": SAID})[0] == 200
    # it is kept no longer
    assert post(preview, "preview-enter", {**asked, "told": SAID})[0] == 422


def test_the_unit_keeps_it_with_what_the_dance_starts_from(preview: Preview, bank: Path) -> None:
    asked = {"file": UNIT, "key": dropped(preview, UNIT), "told": SAID}
    assert post(preview, "preview-enter", asked)[0] == 200
    assert "      file: media/boat.jpg\n" in (bank / UNIT).read_text(encoding="utf-8")
    assert not [p for p in check_folder(bank).problems if p.severity == "error"]


def test_what_an_editor_saved_since_is_not_undone_and_the_picture_stays(
    preview: Preview, bank: Path
) -> None:
    asked = {"file": FILE, "key": dropped(preview), "told": SAID}
    assert post(preview, "preview-enter", asked)[0] == 200
    change(bank / FILE, "title: Fold and float", "title: Fold, and float")
    saved = (bank / FILE).read_bytes()
    assert post(preview, "preview-undo", {"file": FILE})[0] == 409
    assert (bank / FILE).read_bytes() == saved
    assert (media(bank) / "boat.jpg").exists()


def tell(window: Locator) -> None:
    for label, words in TOLD.items():
        window.get_by_label(label).fill(words)
    window.get_by_label("Its licence").select_option("CC-BY-4.0")
    window.get_by_role("button", name="Put it in").click()


DROP = """([data, name]) => {
  const bytes = Uint8Array.from(atob(data), (one) => one.charCodeAt(0));
  const held = new DataTransfer();
  held.items.add(new File([bytes], name));
  for (const kind of ["dragover", "drop"])
    document.querySelector("main").dispatchEvent(
      new DragEvent(kind, { dataTransfer: held, bubbles: true, cancelable: true }));
}"""


def drop(page: Page, data: bytes, name: str) -> Locator:
    page.evaluate(DROP, [base64.b64encode(data).decode(), name])
    window = page.locator("#preview-picture")
    expect(window).to_be_visible()
    return window


def test_dropped_shown_told_put_in_and_undone(page: Page, bank: Path) -> None:
    before = (bank / FILE).read_text(encoding="utf-8")
    window = drop(page, photograph(), "IMG_2041.JPG")
    expect(window).to_contain_text("turned upright")
    expect(window).to_contain_text("No pupil may be recognised")
    # it is shown as it will be published
    shown = window.locator("img")
    expect(shown).to_be_visible()
    assert shown.evaluate("(one) => one.decode().then(() => one.naturalHeight > one.naturalWidth)")
    assert new_pictures(bank) == set()
    tell(window)
    expect(page.locator("#preview-answer")).to_contain_text("media/boat-and-stone.jpg")
    after = (bank / FILE).read_text(encoding="utf-8")
    added = ENTRY.format(name="boat-and-stone.jpg")
    assert after == before.replace("steps:\n", f"{added}steps:\n", 1)
    assert is_upright_and_bare((media(bank) / "boat-and-stone.jpg").read_bytes())
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is out of its folder again")
    assert (bank / FILE).read_text(encoding="utf-8") == before
    assert new_pictures(bank) == set()


def chosen_by_keyboard(page: Page, button: Locator) -> FileChooser:
    """The way to choose that Enter opens.

    The browser is asked something first, and by its answer knows that it is to be given to us: a
    key that comes sooner opens it for nobody, and none beside it.
    """
    button.focus()
    with page.expect_file_chooser() as chooser:
        assert page.evaluate("document.activeElement.type") == "button"
        page.keyboard.press("Enter")
    return chooser.value


def test_chosen_by_the_keyboard_and_no_other_picture_is_overwritten(page: Page, bank: Path) -> None:
    (media(bank) / "Boat.JPG").write_bytes(b"another")
    button = page.get_by_role("button", name="Add a picture…")
    expect(button).to_be_visible()
    chosen_by_keyboard(page, button).set_files(
        {"name": "boat.jpg", "mimeType": "image/jpeg", "buffer": photograph()}
    )
    tell(page.locator("#preview-picture"))
    expect(page.locator("#preview-answer")).to_contain_text("media/boat-2.jpg")
    assert (media(bank) / "Boat.JPG").read_bytes() == b"another"
    assert is_upright_and_bare((media(bank) / "boat-2.jpg").read_bytes())


def test_what_cannot_be_read_says_why_and_nothing_is_written(page: Page, bank: Path) -> None:
    before = (bank / FILE).read_bytes()
    window = drop(page, b"GIF89a" + bytes(30), "boat.jpg")
    expect(window).to_contain_text("save it as a JPEG")
    window.get_by_role("button", name="Leave it").click()
    expect(window).to_be_hidden()
    assert (bank / FILE).read_bytes() == before
