"""Drawings lose comments, metadata and their editor's own marks, and nothing else."""

from __future__ import annotations

import base64
import io

import pytest
from PIL import Image

from build_tools.packs.hidden_data import PictureError, cleaned
from tests.support.built_sites import CONTENT

SVG = '<svg xmlns="http://www.w3.org/2000/svg"'
EDITOR = ' xmlns:ed="http://editor.test/ns"'
CASES = {
    "a comment": ("{}><!-- by me --><path d='M0 0'/></svg>", "{}><path d='M0 0'/></svg>"),
    "metadata": ("{}><metadata><a>me</a><!-- x --></metadata><g/></svg>", "{}><g/></svg>"),
    "an editor's element that closes itself": (
        "{}" + EDITOR + "><ed:a q='1>2'/><circle r='1'/></svg>",
        "{}><circle r='1'/></svg>",
    ),
    "an editor's elements in one another": (
        "{}" + EDITOR + "><ed:a>t<ed:b/><g/><ed:a></ed:a></ed:a><circle r='1'/></svg>",
        "{}><circle r='1'/></svg>",
    ),
    "an editor's attributes": (
        "{}" + EDITOR + " ed:v='1'><rect width='3' ed:b=\"x>y\"/><rect/></svg>",
        "{}><rect width='3'/><rect/></svg>",
    ),
    "a program's instruction": (
        "<?xml version='1.0'?><?made by='me'?>{}><g/></svg>",
        "<?xml version='1.0'?>{}><g/></svg>",
    ),
    "a comment in a style": (
        "{}><style>/* by me */ .a{fill:red/*me*/}</style><g style='x:/*me*/y'/></svg>",
        "{}><style>/**/ .a{fill:red/**/}</style><g style='x:/**/y'/></svg>",
    ),
    "words of a style that only look like a comment": (
        "{}><style>.a::before{content:'/* a */'}</style><title>/* b */</title></svg>",
        "{}><style>.a::before{content:'/* a */'}</style><title>/* b */</title></svg>",
    ),
    "words that only look like an attribute": (
        "{}" + EDITOR + "><title id=\" ed:a='1' \">ed:a='1'</title></svg>",
        "{}><title id=\" ed:a='1' \">ed:a='1'</title></svg>",
    ),
    "a drawing that is clean": (
        "{} xml:lang='en' xmlns:x='http://www.w3.org/1999/xlink'><use x:href='#é'/> </svg>\n",
        "{} xml:lang='en' xmlns:x='http://www.w3.org/1999/xlink'><use x:href='#é'/> </svg>\n",
    ),
}


@pytest.mark.parametrize("case", CASES)
def test_only_what_is_not_drawn_goes(case: str) -> None:
    before, after = (text.replace("{}", SVG).encode() for text in CASES[case])
    assert cleaned("a.svg", before).decode() == after.decode()
    assert cleaned("a.svg", after) == after


def test_a_photograph_in_a_drawing_loses_its_hidden_data_too() -> None:
    photo = io.BytesIO()
    Image.new("RGB", (8, 8), "red").save(photo, "JPEG", comment=b"fifty degrees north")

    def drawing(data: bytes) -> bytes:
        coded = base64.b64encode(data).decode()
        return f'{SVG}><image href="data:image/jpeg;base64,{coded}"/></svg>'.encode()

    clean = cleaned("a.jpg", photo.getvalue())
    assert len(clean) < len(photo.getvalue())
    assert cleaned("a.svg", drawing(photo.getvalue())) == drawing(clean)
    with pytest.raises(PictureError, match="a picture in it is damaged"):
        cleaned("a.svg", drawing(clean).replace(b"base64,", b"base64,&#10;"))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("{}><g></svg>", "line 1"),
        ("<?xml version='1.0'?><!DOCTYPE svg>{}/>", "document type"),
        ("<?xml version='1.0'?><html/>", "not an SVG drawing"),
        ("{}><style>/* <!-- a */ --></style></svg>", "comments cannot be told apart"),
    ],
)
def test_a_drawing_that_cannot_be_cleaned_is_refused_in_words(text: str, says: str) -> None:
    with pytest.raises(PictureError, match=says):
        cleaned("a.svg", text.replace("{}", SVG).encode())


def test_the_banks_own_drawings_are_clean() -> None:
    drawings = sorted((CONTENT / "units").rglob("*.svg"))
    assert len(drawings) >= 5
    for path in drawings:
        assert cleaned(path.name, path.read_bytes()) == path.read_bytes(), path
