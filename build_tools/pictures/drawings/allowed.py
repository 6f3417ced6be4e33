"""What a drawing may be made of. Nothing that is not named here is published.

SVG 2 (W3C), appendices I, J and L; what runs, moves, loads or leads elsewhere is not among it.
"""

from __future__ import annotations


def _words(line: str) -> frozenset[str]:
    return frozenset(line.split())


SHAPES = _words("path rect circle ellipse line polyline polygon")
TEXTS = _words("text tspan textPath")
HOLD_WORDS = TEXTS | _words("title desc style")
"""Elements whose words count; in all others only the space between elements stays."""
GRADIENTS = _words("linearGradient radialGradient")
FILTERED = _words(
    "feGaussianBlur feOffset feBlend feColorMatrix feFlood feComposite feMerge feMergeNode"
)
ONLY_REFERRED_TO = GRADIENTS | _words("defs symbol clipPath mask marker pattern filter title desc")
"""Elements that are not drawn where they stand."""
ELEMENTS = SHAPES | HOLD_WORDS | FILTERED | ONLY_REFERRED_TO | _words("svg g use switch image stop")
LEFT_OUT = _words("metadata")
"""Elements of SVG that go with all that is in them: nothing of them is drawn."""
REFER = GRADIENTS | _words("use textPath pattern filter")
"""Elements that may refer to another part of the drawing by `href`."""

FUNCTIONS = _words(
    "rgb rgba hsl hsla url matrix translate translateX translateY scale scaleX scaleY rotate skew "
    "skewX skewY"
)

PROPERTIES = _words(
    "color fill fill-opacity fill-rule stroke stroke-width stroke-opacity stroke-linecap "
    "stroke-linejoin stroke-miterlimit stroke-dasharray stroke-dashoffset opacity display "
    "visibility overflow clip-path clip-rule mask mask-type filter flood-color flood-opacity "
    "stop-color stop-opacity marker marker-start marker-mid marker-end paint-order vector-effect "
    "mix-blend-mode isolation font font-family font-size font-style font-weight font-variant "
    "font-stretch letter-spacing word-spacing text-anchor text-decoration dominant-baseline "
    "alignment-baseline baseline-shift writing-mode direction unicode-bidi white-space "
    "text-rendering shape-rendering image-rendering color-interpolation "
    "color-interpolation-filters transform transform-origin transform-box"
)
"""Properties of styles; each may also be written as an attribute."""
PATHS = _words("d points")
NUMBERS = PATHS | _words(
    "viewBox width height x y x1 y1 x2 y2 cx cy r rx ry fx fy fr dx dy rotate offset refX refY "
    "markerWidth markerHeight textLength startOffset stdDeviation values k1 k2 k3 k4 transform "
    "gradientTransform patternTransform"
)
"""Attributes whose numbers say how large something is."""
NAMED = _words("id class role lang xml:lang systemLanguage")
"""Attributes that hold words and do nothing by themselves; those that start with aria- too."""
CHOICES = _words(
    "preserveAspectRatio gradientUnits spreadMethod patternUnits patternContentUnits maskUnits "
    "maskContentUnits clipPathUnits markerUnits filterUnits primitiveUnits orient lengthAdjust "
    "method spacing side in in2 result mode operator type edgeMode version xml:space"
)
ATTRIBUTES = PROPERTIES | NUMBERS | NAMED | CHOICES | _words("style href")
