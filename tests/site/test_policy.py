"""What every page holds and leaves out, so that it works from a folder with the network shut."""

from __future__ import annotations

import base64
import hashlib
import re
from pathlib import Path

import pytest

from tests.site.test_one_file import as_made_here
from tests.support.built_sites import (
    files,
    heaviest,
    heaviest_of_each_unit,
    html_pages,
    lessons_to_open,
)
from tests.support.markup import Tag, references, tags

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
    "media-src 'self'; "
    "font-src 'self'; base-uri 'none'; form-action 'none'"
)
# A lesson kept as one file holds its styles, typefaces and pictures, and nothing that runs.
KEPT_POLICY = (
    "default-src 'none'; style-src 'sha256-{digest}'; img-src data:; font-src data:; "
    "base-uri 'none'; form-action 'none'"
)
LONGEST_PATH = 120
PART = re.compile(r"[a-z0-9]+([-._][a-z0-9]+)*")
# Names that Windows keeps for devices, whatever comes after a full stop.
DEVICES = re.compile(r"(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?")
# The typeface's licence goes with it.
LICENCE = "assets/fonts/licence.txt"
LOADERS = {"script", "link", "img", "source", "audio", "video", "iframe", "object", "embed", "use"}


def faults(html: str) -> list[str]:
    """What a page has that the policy stops, or loads from elsewhere, or lacks."""
    found = tags(html)
    before_body = [tag for tag in found if tag.name in ("meta", "link", "script", "title")]
    first = next(
        (tag for tag in before_body if not {"charset"} >= tag.attributes.keys()), Tag("", {}, 0)
    )
    wrong = []
    if (first.attributes.get("http-equiv"), first.attributes.get("content")) != (
        "Content-Security-Policy",
        POLICY,
    ):
        wrong.append(f"line {first.line}: <{first.name}> stands where the policy has to")
    for tag in found:
        if tag.name == "style" or "style" in tag.attributes:
            wrong.append(f"line {tag.line}: <{tag.name}> has styles of its own")
        if tag.name == "script" and "src" not in tag.attributes:
            wrong.append(f"line {tag.line}: a script without a file")
        if tag.name == "script" and tag.attributes.keys() & {"type", "async"}:
            wrong.append(f"line {tag.line}: a script that is not classic and deferred")
        wrong += [
            f"line {tag.line}: <{tag.name}> has {name}"
            for name in tag.attributes
            if name.startswith("on")
        ]
        if tag.name in ("base", "form") and tag.attributes.keys() & {"href", "action"}:
            wrong.append(f"line {tag.line}: <{tag.name}> with an address")
    for tag, address in references(found):
        absolute = re.match(r"([a-z][a-z0-9+.-]*:|//|/)", address, re.IGNORECASE)
        picture = tag.name == "img" or tag.attributes.get("rel") == "icon"
        within = picture and address.startswith("data:")
        if absolute and tag.name in LOADERS and not within:
            wrong.append(f"line {tag.line}: <{tag.name}> loads {address}")
    return wrong


def kept_faults(html: str) -> list[str]:
    """What a lesson kept as one file has that its own policy stops, or lacks."""
    styles = re.findall(r"<style>(.*?)</style>", html, re.DOTALL)
    if len(styles) != 1:
        return [f"{len(styles)} style blocks where there has to be one"]
    digest = base64.b64encode(hashlib.sha256(styles[0].encode()).digest()).decode()
    loaded = re.findall(r"url\((?!\"data:)[^)#]|@import", styles[0])
    scripts = [f"line {tag.line}: a script" for tag in tags(html) if tag.name == "script"]
    block = f"<style>{styles[0]}</style>"
    plain = html.replace(block, "", 1).replace(KEPT_POLICY.format(digest=digest), POLICY, 1)
    return [*faults(plain), *scripts, *(f"the styles load {one}" for one in loaded)]


def test_no_page_needs_what_the_policy_forbids(site: Path, thorough: bool) -> None:
    """Every page in the long run; in the usual one the heaviest of each template of each unit."""
    paths = html_pages(site)
    own = [path for path in paths if path.startswith("units/")]
    if not thorough:
        paths = [*heaviest(site, set(paths) - set(own)), *heaviest_of_each_unit(site, own)]
    assert len(paths) > 20
    wrong = {
        path: found
        for path in paths
        if (found := faults((site / path).read_text(encoding="utf-8")))
    }
    assert wrong == {}


def test_a_kept_lesson_has_a_policy_that_lets_in_its_own_styles_alone(
    site: Path, thorough: bool
) -> None:
    kept = lessons_to_open(site, thorough)
    assert len(kept) > 2
    texts = {path: as_made_here(site, path) for path in kept}
    assert {path: found for path, html in texts.items() if (found := kept_faults(html))} == {}
    html = texts[kept[0]]
    for ours, planted in (
        ("</style>", " </style>"),
        ("</style>", "</style><style></style>"),
        ("style-src 'sha256-", "script-src 'self'; style-src 'sha256-"),
        ("style-src 'sha256-", "style-src 'unsafe-inline' 'sha256-"),
        ("</main>", '<script src="a.js"></script></main>'),
        ("</main>", '<p style="color: red"></p></main>'),
        ("</main>", '<img src="http://example.org/a.png" alt=""></main>'),
    ):
        assert kept_faults(html.replace(ours, planted, 1)), planted


@pytest.mark.parametrize(
    "planted",
    [
        '<p style="color: red">',
        "<style>p { color: red }</style>",
        "<script>1</script>",
        '<p onclick="go()">',
        '<img src="http://example.org/a.png" alt="">',
        '<link rel="stylesheet" href="//example.org/a.css">',
        '<script src="/a.js"></script>',
        '<base href="../">',
    ],
)
def test_each_of_these_would_be_noticed(site: Path, planted: str) -> None:
    html = (site / "index.html").read_text(encoding="utf-8")
    assert len(faults(html.replace("</main>", f"{planted}</main>"))) == 1


@pytest.mark.parametrize("ours", ["img-src 'self' data:", "http-equiv"])
def test_a_page_with_another_policy_or_none_would_be_noticed(site: Path, ours: str) -> None:
    html = (site / "index.html").read_text(encoding="utf-8")
    assert len(faults(html.replace(ours, "data-x", 1))) == 1


def test_styles_load_nothing_from_elsewhere(site: Path) -> None:
    for path, text in files(site).items():
        if path.endswith(".css"):
            loaded = re.findall(rb"url\(\s*['\"]?([^'\")]+)|@import\s+['\"]([^'\"]+)", text)
            for address in (one or other for one, other in loaded):
                beside = (site / path).parent / address.decode().partition("#")[0]
                assert beside.is_file() or address.startswith(b"data:"), f"{path}: {address!r}"


def test_scripts_use_nothing_that_file_addresses_lack(site: Path) -> None:
    words = re.compile(r"\b(fetch|XMLHttpRequest|Worker|import|eval|Function)\s*\(|^import ", re.M)
    for path, text in files(site).items():
        if path.endswith(".js"):
            assert not words.search(text.decode("utf-8")), path


def test_every_name_can_be_held_by_any_file_system(site: Path) -> None:
    paths = list(files(site))
    assert len({path.lower() for path in paths}) == len(paths)
    for path in paths:
        assert len(path) <= LONGEST_PATH, path
        for part in path.split("/"):
            assert PART.fullmatch(part), path
            assert not DEVICES.fullmatch(part), path


def test_only_our_own_pages_are_published(site: Path) -> None:
    """No page for addresses that do not exist, and no map: both would hold absolute addresses."""
    assert LICENCE in files(site)
    names = {path.rpartition("/")[2] for path in files(site)}
    assert not names & {"404.html", "sitemap.xml", "sitemap.xml.gz", "robots.txt"}
    kinds = {name.rpartition(".")[2] for name in names}
    assert kinds <= {"html", "css", "js", "woff2", "svg", "png", "jpg", "txt", "mp3", "ogg"}
