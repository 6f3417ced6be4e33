"""Drawings hold only what is known to be harmless: all else goes, or the drawing is refused.

SVG 2 (W3C) for what an element or a property does; the namespaces of XML 1.0 for what is whose.
"""

from __future__ import annotations

import base64
import io

import pytest
from PIL import Image

from build_tools.pictures.limits import MOST_LEVELS, MOST_SHAPES
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from tests.support.built_sites import CONTENT

SVG = '<svg xmlns="http://www.w3.org/2000/svg"'
EDITOR = ' xmlns:ed="http://editor.test/ns"'
LINKS = ' xmlns:x="http://www.w3.org/1999/xlink"'
CASES = {
    "a comment": ("{}><!-- by me --><path d='M0 0'/></svg>", '{}><path d="M0 0"/></svg>'),
    "metadata": ("{}><metadata><a>me</a><!-- x --></metadata><g/></svg>", "{}><g/></svg>"),
    "an editor's element that closes itself": (
        "{}" + EDITOR + "><ed:a q='1>2'/><circle r='1'/></svg>",
        '{}><circle r="1"/></svg>',
    ),
    "an editor's elements in one another": (
        "{}" + EDITOR + "><ed:a>t<ed:b/><g/><ed:a></ed:a></ed:a><circle r='1'/></svg>",
        '{}><circle r="1"/></svg>',
    ),
    "an editor's attributes": (
        "{}" + EDITOR + " ed:v='1'><rect width='3' ed:b=\"x>y\"/><rect/></svg>",
        '{}><rect width="3"/><rect/></svg>',
    ),
    "attributes that draw nothing": (
        "{} data-name='me'><rect tabindex='1' pathLength='9' width='3'/></svg>",
        '{}><rect width="3"/></svg>',
    ),
    "a program's instruction": (
        "<?xml version='1.0'?><?made by='me'?>{}><?more?><g/></svg>",
        "{}><g/></svg>",
    ),
    "a comment in a style": (
        "{}><style>/* by me */ .a{fill:red/*me*/}</style><g style='fill:/*me*/red'/></svg>",
        '{}><style>.a{fill:red}</style><g style="fill:red"/></svg>',
    ),
    "unknown properties": (
        "{}><style>.a{-ed-line:1;stroke:red}.b{-ed-x:2}</style><g style='-ed-a:b'/></svg>",
        "{}><style>.a{stroke:red}</style><g/></svg>",
    ),
    "words beside the drawing": ("{}>by me <g>me</g> </svg>", "{}><g/> </svg>"),
    "words that are shown": (
        "{}><title>A &lt;b&gt; &amp; c</title><text>a<tspan>b</tspan> </text></svg>",
        "{}><title>A &lt;b&gt; &amp; c</title><text>a<tspan>b</tspan> </text></svg>",
    ),
    "a section of plain text": (
        "{}><style><![CDATA[.a > g{fill:red}]]></style></svg>",
        "{}><style>.a &gt; g{fill:red}</style></svg>",
    ),
    "a link of the older kind": (
        "{} xml:lang='en'" + LINKS + "><use x:href='#é'/> </svg>",
        '{} xml:lang="en"><use href="#é"/> </svg>',
    ),
    "two parts of one name": (
        "{}><g id='a'/><g id='a'/></svg>",
        '{}><g id="a"/><g/></svg>',
    ),
    "a mark first": ("\ufeff{}/>", "{}/>"),
}


@pytest.mark.parametrize("case", CASES)
def test_only_what_is_drawn_stays(case: str) -> None:
    before, after = (text.replace("{}", SVG).encode() for text in CASES[case])
    assert cleaned("a.svg", before).decode() == after.decode() + "\n"
    assert cleaned("a.svg", after) == after + b"\n"
    assert cleaned("a.svg", after + b"\n") == after + b"\n"


def photo() -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (8, 8), "red").save(made, "JPEG", comment=b"fifty degrees north")
    return made.getvalue()


def with_photo(data: bytes) -> bytes:
    coded = base64.b64encode(data).decode()
    return f'{SVG}><image href="data:image/jpeg;base64,{coded}"/></svg>\n'.encode()


def test_a_photograph_in_a_drawing_loses_its_hidden_data_too() -> None:
    clean = cleaned("a.jpg", photo())
    assert len(clean) < len(photo())
    assert cleaned("a.svg", with_photo(photo())) == with_photo(clean)
    with pytest.raises(PictureError, match="a picture in it is damaged"):
        cleaned("a.svg", with_photo(clean).replace(b"base64,", b"base64,*"))
    with pytest.raises(PictureError, match="not a JPEG picture"):
        cleaned("a.svg", with_photo(b"GIF89a"))


REFUSED = {
    "cut off": ("{}><g></svg>", "not sound XML"),
    "a document type": ("<?xml version='1.0'?><!DOCTYPE svg>{}/>", "a document type"),
    "an entity": ("<!DOCTYPE svg [<!ENTITY a 'b'>]>{}/>", "a document type"),
    "an entity that nobody declared": ("{}>&a;</svg>", "not sound XML"),
    "another document": ("<?xml version='1.0'?><html/>", "not an SVG drawing"),
    "no namespace": ("<svg><g/></svg>", "does not say that it is SVG"),
    "another namespace": ("<svg xmlns='http://a.test/'/>", "does not say that it is SVG"),
    "a web page": ("{}><p xmlns='http://www.w3.org/1999/xhtml'/></svg>", "piece of a web page"),
    "another encoding": ("<?xml version='1.0' encoding='UTF-7'?>{}/>", "written in UTF-7"),
    "an unknown encoding": ("<?xml version='1.0' encoding='x-mac'?>{}/>", "written in x-mac"),
    "a script": ("{}><script/></svg>", "a part `script`"),
    "a link": ("{}><a href='#b'/></svg>", "a part `a`"),
    "a moving part": ("{}><set attributeName='x'/></svg>", "a part `set`"),
    "a handler": ("{} ONclick='a'/>", "by `ONclick`"),
    "an address": ("{}><use href='a.svg#b'/></svg>", "leads to `a.svg#b`"),
    "an older address": ("{}" + LINKS + "><use x:href='//a.test/#b'/></svg>", "leads to `//a"),
    "a picture from elsewhere": ("{}><image href='https://a.test/b.png'/></svg>", "leads to"),
    "a drawing in a drawing": (
        "{}><image href='data:image/svg+xml;base64,AAAA'/></svg>",
        "leads to `data:image/svg",
    ),
    "a fill from elsewhere": ("{}><g fill='url(//a.test/#b)'/></svg>", "elsewhere by `fill`"),
    "a fill in capitals": ("{}><g fill='URL(//a.test/#b)'/></svg>", "elsewhere by `fill`"),
    "a set of pictures": (
        "{}><style>.a{mask:image-set('a.png' 1x)}</style></svg>",
        "styles ask for something",
    ),
    "a style by codes": ("{}><g style='fill:\\75rl(a)'/></svg>", "styles ask for something"),
    "an unknown function": ("{}><g style='filter:blur(9px)'/></svg>", "a function in `filter`"),
    "a variable": ("{}><g fill='var(--a)'/></svg>", "a function in `fill`"),
    "a selector of moods": (
        "{}><style>g:hover{fill:red}</style></svg>",
        "choose their parts",
    ),
    "a style that is not closed": ("{}><style>.a{fill:red} .b</style></svg>", "cut off"),
    "more styles": ("{}><style>@import 'a.css';</style></svg>", "styles ask for something"),
    "a number beyond all": ("{}><rect width='1e9'/></svg>", "`width` has a number beyond"),
    "a number of many figures": (
        "{}><rect width='1" + "0" * 50 + "'/></svg>",
        "more than 40 figures",
    ),
    "a path of words": ("{}><path d='M0 0 run'/></svg>", "`d` is no path"),
    "a pointer from elsewhere": ("{}><g cursor='url(//a.test/b)'/></svg>", "by `cursor`"),
    "a part named by codes": ("{}><g id='a'><use href='#%61'/></g></svg>", "leads to `#%61`"),
    "a style from elsewhere": (
        "<?xml-stylesheet href='a.css'?>{}/>",
        "a style from elsewhere by `xml-stylesheet`",
    ),
    "a script in what is left out": ("{}><metadata><script/></metadata></svg>", "a part `script`"),
    "a style in what is left out": ("{}><metadata><style/></metadata></svg>", "a part `style`"),
    "an address in an editor's part": (
        "{}" + EDITOR + "><ed:a><image href='//a.test/b.png'/></ed:a></svg>",
        "leads to `//a.test",
    ),
    "parts that lie deep": (
        "{}>" + "<g>" * MOST_LEVELS + "</g>" * MOST_LEVELS + "</svg>",
        f"more than {MOST_LEVELS} deep",
    ),
    "shapes without end": ("{}>" + "<path/>" * (MOST_SHAPES + 1) + "</svg>", "more than 5,000"),
    "a part that shows itself": (
        "{}><g id='a'><use href='#a'/></g></svg>",
        "the part `a` shows itself",
    ),
    "two parts that show one another": (
        "{}><g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g></svg>",
        "shows itself again",
    ),
    "a pattern filled with itself": (
        "{}><pattern id='a'><rect fill='url(#a)'/></pattern><rect fill='url(#a)'/></svg>",
        "the part `a` shows itself",
    ),
    "a mask of itself": (
        "{}><mask id='a'><rect style='mask:url(#a)'/></mask><rect mask='url(#a)'/></svg>",
        "the part `a` shows itself",
    ),
    "a style that fills a pattern with itself": (
        "{}><style>rect{fill:url(#a)}</style><pattern id='a'><rect/></pattern><rect/></svg>",
        "the part `a` shows itself",
    ),
}


@pytest.mark.parametrize("case", REFUSED)
def test_a_drawing_that_may_do_more_is_refused_in_words(case: str) -> None:
    text, says = REFUSED[case]
    with pytest.raises(PictureError, match=says.replace("(", "[(]")):
        cleaned("a.svg", text.replace("{}", SVG).encode())


@pytest.mark.parametrize("coding", ["utf-16", "utf-16-le", "utf-16-be", "utf-32", "cp037"])
def test_a_drawing_in_another_encoding_is_refused(coding: str) -> None:
    drawing = f"<?xml version='1.0'?>{SVG}><title>é</title></svg>"
    with pytest.raises(PictureError):
        cleaned("a.svg", drawing.encode(coding))


def doubled(levels: int, times: int, inside: str) -> str:
    """Parts that show the one before them so many times each."""
    made = f'<g id="l0">{inside}</g>'
    for n in range(1, levels + 1):
        made += f'<g id="l{n}">' + f'<use href="#l{n - 1}"/>' * times + "</g>"
    return f"{SVG}><defs>{made}</defs><use href='#l{levels}'/></svg>"


SEE_THROUGH, AGAIN = '<g opacity=".5"/>', '<use href="#a"/>'
COSTLY = {
    "shapes shown again": (doubled(6, 9, "<rect/>"), "shapes to draw: 531,441"),
    "a few shapes often": (doubled(4, 8, "<rect/>"), "again to draw: 4,096, more than 2,000"),
    "without end": (doubled(9, 11, "<rect/>" * 500), "shapes to draw: "),
    "a path shown again": (
        doubled(1, 99, f'<path d="M0 0{" L1 2" * 5000}"/>'),
        "points of paths to draw",
    ),
    "styles at its parts": (
        SVG + ">" + f"<g style='{'fill:red;' * 100}'/>" * 700 + "</svg>",
        "its styles have more than 600,000 letters",
    ),
    "letters": (f"{SVG}><text>{'a' * 5_001}</text></svg>", "letters to draw: 5,001"),
    "accents on one letter": (SVG + "><text>a" + "\u0301" * 9_000 + "</text></svg>", "letters"),
    "masks": (doubled(2, 10, '<g mask="url(#m)"/>'), "masks, filters, clips"),
    "see-through groups": (f"{SVG}>{SEE_THROUGH * 61}</svg>", "see-through groups"),
    "see-through by a style": (
        f"{SVG}><style>g{{opacity:.5}}</style>{'<g/>' * 61}</svg>",
        "see-through groups",
    ),
    "patterns handed on": (
        f'{SVG}><pattern id="p">{"<rect/>" * 100}</pattern>'
        f'<g fill="url(#p)">{"<rect/>" * 60}</g></svg>',
        "shapes to draw: 6,060",
    ),
    "a pattern around a pattern": (
        f'{SVG}><pattern id="p">{"<rect/>" * 90}</pattern><g fill="url(#p)">'
        f'<pattern id="q">{"<rect/>" * 90}</pattern></g><rect fill="url(#q)"/></svg>',
        "shapes to draw: 8,191",
    ),
    "markers": (
        f'{SVG}><marker id="m">{"<rect/>" * 10}</marker>'
        f'<path marker-mid="url(#m)" d="M0 0{" L1 2" * 600}"/></svg>',
        "shapes to draw: 6,021",
    ),
    "dashes": (
        f'{SVG}><g stroke-dasharray=".01"><path d="M0 0H10000"/></g></svg>',
        "dashes to draw: 2,000,000",
    ),
}


@pytest.mark.parametrize("case", COSTLY)
def test_a_drawing_that_takes_too_long_to_draw_is_refused(case: str) -> None:
    text, says = COSTLY[case]
    with pytest.raises(PictureError, match=says):
        cleaned("a.svg", text.encode())


def test_photographs_shown_again_count_again() -> None:
    made = io.BytesIO()
    Image.new("L", (3000, 3000)).save(made, "PNG")
    coded = base64.b64encode(made.getvalue()).decode()
    one = f'<image id="a" href="data:image/png;base64,{coded}"/>'
    assert cleaned("a.svg", f'{SVG}>{one}<use href="#a"/></svg>'.encode())
    with pytest.raises(PictureError, match="points of photographs to draw: 27,000,000"):
        cleaned("a.svg", f"{SVG}>{one}{AGAIN * 2}</svg>".encode())


def test_the_banks_own_drawings_are_clean() -> None:
    drawings = sorted((CONTENT / "units").rglob("*.svg"))
    assert len(drawings) >= 5
    for path in drawings:
        assert cleaned(path.name, path.read_bytes()) == path.read_bytes(), path
