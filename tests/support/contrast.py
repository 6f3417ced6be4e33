"""The contrast of two colours, as WCAG 2.2 defines "contrast ratio" and "relative luminance"."""

from __future__ import annotations

Colour = tuple[int, int, int]


def from_hex(text: str) -> Colour:
    """The red, green and blue of "#RGB" or "#RRGGBB", each 0 to 255."""
    digits = text.strip().removeprefix("#")
    if len(digits) == 3:
        digits = "".join(digit * 2 for digit in digits)
    if len(digits) != 6:
        raise ValueError(f"no colour of three or six digits: {text}")
    return int(digits[:2], 16), int(digits[2:4], 16), int(digits[4:], 16)


def luminance(colour: Colour) -> float:
    """Relative luminance: 0 for black, 1 for white."""
    red, green, blue = (linear(part / 255) for part in colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def linear(part: float) -> float:
    """One part of an sRGB colour, 0 to 1, as light."""
    return part / 12.92 if part <= 0.04045 else float(((part + 0.055) / 1.055) ** 2.4)


def contrast(one: Colour, other: Colour) -> float:
    """The contrast ratio of two colours: 1 for the same, 21 for black on white."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)
