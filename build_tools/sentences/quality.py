"""How well something is danced: control, extension, focus, balance, a clear intention."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

SAYS_HOW = Saying(
    """
    control|controlled|controls
    balance|balanced|balances|wobble|wobbles|steady|steadily
    extend|extends|extension|extended
    stretch|stretches|reach|reaches|open ~2 right|all|fully|through|beyond|past|long|far
    fingertip|fingertips|toes ~2 stretched|pointed
    long|clean|clear|strong ~1 line|lines
    focus|focused|gaze
    eye|eyes ~4 look|looks|follow|follows|on|go|goes|fixed|out|up
    look|looks ~1 out|up|along|beyond|past|where
    land|lands|landing ~3 soft|softly|silent|silently|light|lightly|sound|heard|quiet|quietly|
        bent
    soft|softly|gentle|gently|smooth|smoothly|light|lightly|heavy|heavily|strong|strongly|sharp|
        sharply|crisp|sudden|suddenly|delicate|delicately|firm|firmly|fluent|fluently|flowing|
        graceful|gracefully|precise|precisely|precision|accurate|accurately|quietly|smoothly
    posture|tall ~1 back|spine|proud
    expression|expressive|expressively|intention|mood|character|feeling|feelings
    energy|dynamics|quality|contrast
    with|shows ~2 care|commitment|confidence|conviction|concentration
    whole|every ~2 body ~2 dances|moves|listens|is
    to ~1 end|last|finish ~2 of ~2 move|movement|reach
    all ~1 its|their|the counts|count|time
    full|whole ~1 length|size|range|height
    tension|tight|poise|poised|alive
    """
)
"""A text that speaks of how it is danced, not of what, when and by whom."""
