"""What the picture of an action shows, in words."""

from __future__ import annotations

from build_tools.body.gesturing import pulled_away
from build_tools.body.jumping import arms_out
from build_tools.body.moves import Move, rises, weight_aside
from build_tools.body.poses import Moved
from build_tools.body.sitting import small_jump

_LEVELS = {"low": "low", "middle": "half high", "high": "high"}
_STEPS = {
    "side": "side-steps",
    "gallop": "gallops",
    "skip": "skips",
    "hop": "hops",
    "run": "running steps",
    "tiptoe": "steps on tiptoe",
    "creep": "low, creeping steps",
    "stamp": "stamps",
    "crawl": "steps on hands and knees",
    "roll": "rolls, curled up",
    "pull": "steps, one arm pulled back to the hip",
    "push": "steps, both arms pushing forwards",
    "float": "steps, arms floating out to the sides",
}
_NUMBERS = dict(
    enumerate(("one", "two", "three", "four", "five", "six", "seven", "eight"), start=1)
)
_JUMPS = {
    "tucked": "tucked up in the air",
    "star": "arms and legs wide in the air",
    "small": "small, arms low",
    "reach": "long and thin in the air, arms up",
}
_GESTURES = {
    "clap": "hands clap in front",
    "snap": "arms bent at the sides open and snap shut",
    "flick": "hands flick, fingers spread",
    "ripple": "arms and fingers ripple in front",
    "press": "both arms press forwards and down",
    "lift": "both arms lift forwards and up",
    "pull": "one arm pulls back, the other stays in front",
    "wave": "one hand waves above the head",
    "point": "one arm points",
    "stretch": "arms stretch",
    "open": "arms open wide",
    "close": "arms close in front",
    "swing": "arms swing, one up and one down",
    "bow": "the body bows",
    "lean": "lean, the feet still",
}
_PARTS = {
    "elbow": "elbows out to the sides",
    "shoulder": "shoulders lift",
    "head": "the head moves",
    "foot": "one foot lifts out to the side",
    "leg": "one leg lifts out to the side",
    "knee": "one knee lifts",
    "hip": "the hips push out",
    "back": "the back rounds",
    "chest": "the chest opens",
}
_SHAPES = {
    "curled": "curled up small",
    "wide": "wide, arms and legs apart",
    "tall": "tall and narrow",
    "twisted": "twisted, the shoulders one way and the feet another",
    "balance": "balanced on one foot",
}
_HALF_HIGH = {
    "tall": "the knees bent, arms round you",
    "curled": "the knees and back bent, arms round you",
}
"""Shapes that are others half high: neither tall nor small, as they are drawn."""
_SEATED = {
    "crouched": "folded forwards",
    "standing": "sitting upright",
    _HALF_HIGH["tall"]: "sitting upright, arms round you",
    _HALF_HIGH["curled"]: "the back bent, arms round you",
}
_TOWARDS = {
    "partner": "towards your partner",
    "centre": "towards the middle",
    "home": "towards your own mark",
}
_WAYS = {
    "strong": "strongly",
    "light": "lightly",
    "sudden": "suddenly",
    "sustained": "slowly and evenly",
    "direct": "straight there",
    "indirect": "by a winding way",
    "free": "freely",
    "bound": "held back",
}


def body_in_words(done: Moved) -> str:
    """One sentence: what the body does, as it is drawn."""
    said = ", ".join(filter(None, (_doing(done), _level(done.move), *_feel(done.move))))
    where = {"chair": "On a chair: ", "wheels": "In a wheelchair: "}.get(done.body, "")
    return where + (said if where else said[0].upper() + said[1:])


def deed_in_words(done: Moved, seconds: float | None = None) -> str:
    """What the body does, without its level and how it feels.

    `seconds` are those it has. Where a wheelchair cannot do it in them, the body in it does.
    """
    if done.body == "wheels" and seconds is not None and seconds < wheel_seconds(done.move):
        return _instead_of_wheeling(done)
    return _doing(done)


WHEELED_QUARTER = 1.0
"""Seconds that a child takes to turn a wheelchair a quarter round by hand and stop, and to push it
once and let it roll: common practice, no source."""


def wheel_seconds(move: Move) -> float:
    """The seconds that a move takes in a wheelchair: going aside is a turn, a push, a turn back."""
    if move.kind == "travel" and _goes_aside(move):
        return 3 * WHEELED_QUARTER
    if move.kind == "turn":
        return abs(move.turn) / 90 * WHEELED_QUARTER * (2 if move.there_and_back else 1)
    return 0.0


def _goes_aside(move: Move) -> bool:
    return move.direction == "sideways" or move.manner == "side"


def _instead_of_wheeling(done: Moved) -> str:
    side = _side(done.move)
    if done.move.kind == "travel":
        return f"lean to the {side} and reach that way"
    return f"stay, and turn the head, chest and arms to the {side}"


def _doing(done: Moved) -> str:
    move = done.move
    if "jump" in move.kinds:
        return _jump(done)
    if move.kind == "travel":
        return _travel(done)
    if move.kind == "turn":
        return _turn(done)
    if move.kind == "gesture":
        return _gesture(done)
    if move.kind == "transfer":
        return _transfer(done)
    if done.held:
        return "still, in the same shape"
    held = _held(move)
    if done.body != "standing":
        held = _SEATED.get(held, held)
    return f"still, {held}"


def _held(move: Move) -> str:
    """The shape that is held, at its level: tall with the knees bent is no tall shape."""
    if move.end == "middle" and move.manner in _HALF_HIGH:
        return _HALF_HIGH[move.manner]
    low = move.end == "low" and (move.manner == "tall" or move.size == "small")
    standing = "crouched" if move.end == "low" else "standing"
    return _SHAPES.get("curled" if low else move.manner or "", standing)


def _travel(done: Moved) -> str:
    move, way = done.move, _way(done.move)
    if done.body == "wheels":
        turned = _goes_aside(move)
        first = f"turn to the {_side(move)} and " if turned else ""
        looked = ", after a look behind" if way == "backwards" else ""
        return f"{first}wheel {'' if turned else way or 'forwards'}".strip() + looked
    if done.body == "chair":
        return f"feet step on the spot{', leaning ' + way if way else ''}"
    size = f"{move.size} " if move.size and move.manner is None else ""
    steps, comma, how = _STEPS.get(move.manner or "", "steps").partition(",")
    number = "" if move.manner == "roll" else f"{_NUMBERS.get(move.steps, move.steps)} "
    one = steps.removesuffix("s") if move.steps == 1 else steps
    side = way or (f"to the {_side(move)}" if move.manner == "side" else "")
    return f"{number}{size}{one} {side}".strip() + comma + how


def _jump(done: Moved) -> str:
    move = done.move
    again = f" {_NUMBERS[move.times]} times" if move.times > 1 else ""
    shape = _JUMPS.get(move.manner or "", "arms and legs wide" if move.size == "big" else "")
    if done.body != "standing":
        if small_jump(move):
            return "lift the shoulders and let them drop softly" + again
        return "fold forwards, then throw the arms and chest up" + again
    if move.part in ("hand", "fingers", "arm") and move.manner == "small":
        shape = "small, hands up with fingers spread"
    way = _way(move)
    turned = ", turning in the air" if "turn" in move.kinds else ""
    said = "bend the knees and jump" + (f" {way}" if way else "") + again
    said += f", {shape}" if shape else ""
    return f"{said}{turned}, landing on bent knees"


def _turn(done: Moved) -> str:
    move = done.move
    if done.body == "chair":
        return f"twist round to the {_side(move)} and back"
    if move.there_and_back:
        return f"turn a little way to the {_side(move)} and back"
    far = {90: "a quarter", 180: "half way", 270: "three quarters"}.get(abs(int(move.turn)))
    by = (
        ", a wheel in each hand"
        if done.body == "wheels"
        else ", arms out"
        if arms_out(move)
        else ""
    )
    return f"turn {far + ' round' if far else 'right round'} to the {_side(move)}{by}"


def _gesture(done: Moved) -> str:
    move = done.move
    if done.body == "wheels" and move.part in ("foot", "leg", "knee"):
        return "one hand reaches low, where a foot would go"
    if pulled_away(move) and move.part not in _PARTS:
        return f"one arm is pulled {move.direction}"
    if move.manner == "open" and move.direction == "up":
        return "arms shoot up"
    if move.manner == "lean" and _way(move):
        return f"lean {_way(move)}, the feet still"
    manner = "lift" if move.manner == "press" and rises(move) else move.manner
    said = _PARTS.get(move.part or "") or _GESTURES.get(manner or "")
    if said is None:
        said = f"arms move {_way(move)}".strip() if _way(move) else "arms move"
    return said + {"small": ", small", "big": ", big"}.get(move.size or "", "")


def _transfer(done: Moved) -> str:
    move, stood = done.move, done.body == "standing"
    if move.manner == "wind":
        return f"{'bend one knee and ' if stood else ''}wind the arms and body back"
    if weight_aside(move):
        way = _way(move) or "to the right"
        if move.size == "small" and stood:
            return f"sway {way}, both feet on the floor"
        return f"lean {way}, on to one {'foot' if stood else 'hip'}"
    if move.end == "low" or (move.manner == "fold" and move.end == "middle"):
        low = "curl up small" if move.manner == "fold" else "bend the knees and sink"
        return low if stood else "fold forwards"
    if move.manner == "rise" or move.start == "low" or rises(move):
        return "rise"
    return "bend the knees" if stood else "fold a little forwards"


def _level(move: Move) -> str:
    if move.kind in ("stillness", "jump") or "jump" in move.also:
        return ""
    if move.start == move.end:
        return _LEVELS[move.end]
    return f"from {_LEVELS[move.start]} to {_LEVELS[move.end]}"


def _feel(move: Move) -> list[str]:
    return [_WAYS[one] for one in _WAYS if one in move.feel]


def _side(move: Move) -> str:
    return "left" if move.left else "right"


def _way(move: Move) -> str:
    if move.towards and move.sideless and move.direction in ("sideways", "diagonal"):
        return _TOWARDS.get(move.towards, f"towards the {move.towards}")
    if move.direction == "sideways":
        return f"to the {_side(move)}"
    if move.direction == "diagonal":
        return f"diagonally to the {_side(move)}"
    return move.direction or ""
