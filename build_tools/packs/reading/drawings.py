"""What may not be in a drawing: whatever runs, asks elsewhere, or leads elsewhere."""

from __future__ import annotations

import re
from collections.abc import Callable
from xml.parsers import expat

from build_tools.packs.reading.refusal import RefusedError
from build_tools.sentences.word_lists import word_list

_ELEMENTS = word_list(
    "svg g defs symbol use title desc path rect circle ellipse line polyline polygon text tspan "
    "textPath clipPath mask pattern marker linearGradient radialGradient stop image filter "
    "feGaussianBlur feOffset feBlend feColorMatrix feFlood feComposite feMerge feMergeNode "
    "style switch metadata"
)
"""What a drawing is made of; SVG 2 has more, all that runs or moves among them."""
_MOST_USES = 100
"""How often parts may be shown again: each may show others again, and so on without end."""
_SVG = "http://www.w3.org/2000/svg"
_PICTURE = re.compile(r"data:image/(png|jpeg|webp);base64,")
_ELSEWHERE = re.compile(
    r"url\(\s*[\"']?(?!#)|@import|expression\s*\(|javascript:|\\", re.IGNORECASE
)


def refuse_active(name: str, data: bytes) -> None:
    """Raise for a drawing that does more than show itself, with the line that does it."""
    parser = expat.ParserCreate(namespace_separator="\n")
    styles: list[str] = []
    uses: list[str] = []

    def refuse(what: str) -> None:
        raise RefusedError(f"{name}:{parser.CurrentLineNumber}: {what}")

    def start(full: str, attributes: dict[str, str]) -> None:
        space, _, local = full.rpartition("\n")
        if space == _SVG and local not in _ELEMENTS:
            refuse(f"the drawing has a part `{local[:30]}`, which can run or lead elsewhere")
        if space in ("http://www.w3.org/1999/xhtml", "http://www.w3.org/1998/Math/MathML"):
            refuse("the drawing has a piece of a web page in it")
        for key, value in attributes.items():
            _refuse_attribute(key.rpartition("\n")[2], value, local, refuse)
        if local == "style":
            styles.append("")
        if local == "use":
            uses.append(local)
            if len(uses) > _MOST_USES:
                refuse(f"the drawing shows parts again more than {_MOST_USES} times")

    def text(words: str) -> None:
        if styles:
            styles[-1] += words

    def end(full: str) -> None:
        if full.rpartition("\n")[2] == "style" and styles and _ELSEWHERE.search(styles.pop()):
            refuse("the drawing's styles ask for something elsewhere")

    def doctype(*_: object) -> None:
        refuse("the drawing declares a document type, which can make it grow or read other files")

    def instruction(*_: object) -> None:
        refuse("the drawing has an instruction for a program")

    parser.StartElementHandler = start
    parser.EndElementHandler = end
    parser.CharacterDataHandler = text
    parser.StartDoctypeDeclHandler = doctype
    parser.ProcessingInstructionHandler = instruction
    try:
        parser.Parse(data, True)
    except expat.ExpatError as error:
        raise RefusedError(f"{name}:{error.lineno}: the drawing is not sound XML") from None


def _refuse_attribute(key: str, value: str, element: str, refuse: Callable[[str], None]) -> None:
    if key.casefold().startswith("on"):
        refuse(f"the drawing runs something by `{key[:30]}`")
    tight = "".join(value.split())
    if key == "href" and not tight.startswith("#"):
        if not (element == "image" and _PICTURE.match(tight)):
            refuse(f"the drawing leads to `{tight[:40]}`")
    elif key != "href" and _ELSEWHERE.search(value):
        refuse(f"the drawing asks for something elsewhere by `{key[:30]}`")
