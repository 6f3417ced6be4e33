"""What the picture of an action shows, in words."""

from __future__ import annotations

from build_tools.body.gesturing import pulled_away
from build_tools.body.hands import struck, there_and_agains
from build_tools.body.jumping import arms_out
from build_tools.body.moves import (
    Move,
    held_out,
    rises,
    shares_weight,
    slashes,
    stays_tall,
    weight_aside,
)
from build_tools.body.poses import Moved
from build_tools.body.sitting import small_jump
from build_tools.page_words.forms import number_in_words
from build_tools.page_words.words import _, ngettext, of_schema
from build_tools.views.diagrams import body_phrases as phrases
from build_tools.views.diagrams.body_wheeling import goes_aside, wheel_seconds
from build_tools.views.words.punctuation import capital
from build_tools.views.words.sides_named import NO_NAMES, towards_in_words


def body_in_words(done: Moved) -> str:
    """One sentence: what the body does, as it is drawn."""
    said = ", ".join(filter(None, (_doing(done), _level(done), *_feel(done.move))))
    if done.body == "chair":
        return _("On a chair: {what}", what=said)
    if done.body == "wheels":
        return _("In a wheelchair: {what}", what=said)
    return capital(said)


def deed_in_words(done: Moved, seconds: float | None = None) -> str:
    """What the body does, without its level and how it feels.

    `seconds` are those it has. Where a wheelchair cannot do it in them, the body in it does.
    """
    if done.body == "wheels" and seconds is not None and seconds < wheel_seconds(done.move):
        return _instead_of_wheeling(done)
    return _doing(done)


def _instead_of_wheeling(done: Moved) -> str:
    if done.move.kind == "travel":
        return _("lean {way} and reach that way", way=_aside(done.move))
    return _("stay, and turn the head, chest and arms {way}", way=_aside(done.move))


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
        return _("still, in the same shape")
    if "size" in move.chosen:
        return _("still, in a bigger or smaller shape")
    if move.part in phrases.AT_THE_HEAD and move.manner is None:
        return _("still, {shape}", shape=_(phrases.AT_THE_HEAD[move.part]))
    held = _held(move)
    if done.body != "standing":
        held = phrases.SEATED.get(held, held)
    return _("still, {shape}", shape=_(held))


def _held(move: Move) -> str:
    """The shape that is held, at its level: tall with the knees bent is no tall shape.

    As its message, which is asked for when it is said.
    """
    if move.end == "middle" and move.manner in phrases.HALF_HIGH:
        return phrases.HALF_HIGH[move.manner]
    low = move.end == "low" and (move.manner == "tall" or move.size == "small")
    standing = "crouched" if move.end == "low" else "standing"
    return phrases.SHAPES.get("curled" if low else move.manner or "", phrases.SHAPES[standing])


def _travel(done: Moved) -> str:
    move, way = done.move, _way(done.move)
    if done.body == "wheels":
        return _wheeled(move, way)
    if done.body == "chair":
        stepping = _("feet step on the spot")
        if way:
            stepping = _("feet step on the spot, leaning {way}", way=way)
        return ", ".join(filter(None, (stepping, _arms_too(move))))
    named = phrases.STEPS.get(move.manner or "")
    if named is None:
        named = (
            phrases.STEP if move.manner else phrases.ANY_STEPS.get(move.size or "", phrases.STEP)
        )
    steps = ngettext(*named, move.steps, number=number_in_words(move.steps))
    way = way or (_aside(move) if move.manner == "side" else "")
    if way:
        steps = _("{steps} {way}", steps=steps, way=way)
    how = phrases.STEPPED.get(move.manner or "")
    said = (steps, _(how) if how else "", _arms_too(move), _size(move))
    return ", ".join(filter(None, said))


def _arms_too(move: Move) -> str:
    slashing = _("arms slashing") if slashes(move) else ""
    return _("one arm held out") if held_out(move) else slashing


def _size(move: Move) -> str:
    """That it is bigger or smaller, where pupils choose which."""
    return _("bigger or smaller") if "size" in move.chosen else ""


def _wheeled(move: Move, way: str) -> str:
    if goes_aside(move):
        said = _("turn {way} and wheel", way=_aside(move))
    else:
        said = _("wheel {way}", way=way or of_schema("forwards"))
    if move.direction == "backwards":
        return _("{wheel}, after a look behind", wheel=said)
    return said


def _jump(done: Moved) -> str:
    move = done.move
    if done.body != "standing":
        if small_jump(move):
            return _so_often(move, _("lift the shoulders and let them drop softly"))
        return _so_often(move, _("fold forwards, then throw the arms and chest up"))
    if "size" in move.chosen:
        shape = _size(move)
    elif slashes(move):
        shape = _arms_too(move)
    elif move.part in ("hand", "fingers", "arm") and move.manner == "small":
        shape = _("small, hands up with fingers spread")
    elif move.manner in phrases.JUMPS:
        shape = _(phrases.JUMPS[move.manner])
    else:
        shape = _("arms and legs wide") if move.size == "big" else ""
    way = _way(move)
    jump = _("bend the knees and jump {way}", way=way) if way else _("bend the knees and jump")
    said = (
        _so_often(move, jump),
        shape,
        _("turning in the air") if "turn" in move.kinds else "",
        _("landing on bent knees"),
    )
    return ", ".join(filter(None, said))


def _so_often(move: Move, jump: str) -> str:
    if move.times == 1:
        return jump
    return _("{jump} {times} times", jump=jump, times=number_in_words(move.times))


def _turn(done: Moved) -> str:
    move = done.move
    if done.body == "chair":
        return _("twist round {way} and back", way=_aside(move))
    if move.there_and_back:
        return _("turn a little way {way} and back", way=_aside(move))
    far = phrases.TURNS.get(abs(int(move.turn)))
    turned = _(far, way=_aside(move)) if far else _("turn once round {way}", way=_aside(move))
    if done.body == "wheels":
        return _("{turn}, a wheel in each hand", turn=turned)
    return _("{turn}, arms out", turn=turned) if arms_out(move) else turned


def _gesture(done: Moved) -> str:
    move = done.move
    if "body_part" in move.chosen:
        return _chosen_part(move)
    if done.body == "wheels" and move.part in ("foot", "leg", "knee"):
        return _("one hand reaches low, where a foot would go")
    if pulled_away(move) and move.part not in phrases.PARTS:
        return _("one arm is pulled {way}", way=of_schema(str(move.direction)))
    if move.manner == "open" and move.direction == "up":
        return _("arms shoot up")
    if move.manner == "lean" and _way(move):
        leant = _("lean {way}, the feet still", way=_way(move))
        if shares_weight(move):
            leant = _("lean {way} the width of a hand, the feet still", way=_way(move))
        return ", ".join(filter(None, (leant, _arms_too(move))))
    if move.manner == "knock" and struck(move):
        return _knock(move)
    manner = "lift" if move.manner == "press" and rises(move) else move.manner
    known = phrases.PARTS.get(move.part or "") or phrases.GESTURES.get(manner or "")
    said = _(known) if known is not None else _arms_move(move)
    size = _size(move) or (_(phrases.SIZES[move.size]) if move.size in phrases.SIZES else "")
    return f"{said}, {size}" if size else said


def _knock(move: Move) -> str:
    low, twice = move.direction == "down", there_and_agains(move) > 1
    if low:
        return _("both hands knock low twice") if twice else _("both hands knock low")
    if twice:
        return _("both hands knock twice, close to the body")
    return _("both hands knock, close to the body")


def _arms_move(move: Move) -> str:
    way = _way(move)
    if move.one_side and move.part in ("arm", "hand"):
        return _("one arm moves {way}", way=way) if way else _("one arm moves")
    return _("arms move {way}", way=way) if way else _("arms move")


def _chosen_part(move: Move) -> str:
    if move.manner in phrases.CHOSEN_PARTS:
        return _(phrases.CHOSEN_PARTS[move.manner])
    way = _way(move)
    return _("the part you chose moves {way}", way=way) if way else _("the part you chose moves")


def _transfer(done: Moved) -> str:
    move, stood = done.move, done.body == "standing"
    if move.manner == "wind":
        if stood:
            return _("bend one knee and wind the arms and body back")
        return _("wind the arms and body back")
    if weight_aside(move):
        way = _way(move) or _("to the right")
        if move.size == "small" and stood:
            return _("a small sway {way}, both feet on the floor", way=way)
        if stood:
            return _("lean {way}, on to one foot", way=way)
        if move.size == "small":
            return _("lean a little {way}", way=way)
        return _("lean {way}, on to one hip", way=way)
    if move.end == "low" or (move.manner == "fold" and move.end == "middle"):
        if not stood:
            return _("fold forwards")
        return _("curl up small") if move.manner == "fold" else _("bend the knees and sink")
    if move.manner == "rise" or move.start == "low" or rises(move):
        said = (_("rise") if stood else _("unfold and sit up tall"), _arms_too(move))
        return ", ".join(filter(None, said))
    if stays_tall(move) and move.manner == "settle":
        return _("come to rest, standing") if stood else _("come to rest, sitting upright")
    if stays_tall(move):
        return _("stand tall") if stood else _("sit tall")
    return _("bend the knees") if stood else _("fold a little forwards")


def _level(done: Moved) -> str:
    """How high, where that is not as everybody stands: "half high" made teachers crouch."""
    move = done.move
    if move.kind in ("stillness", "jump") or "jump" in move.also:
        return ""
    if move.start == move.end:
        if move.kind == "transfer" or move.end == "middle":
            return ""
        if move.end == "high" and move.kind != "gesture":
            if done.body == "standing":
                return _("standing tall")
            leans = done.body == "chair" and move.kind == "travel" and _way(move)
            return "" if leans else _("sitting tall")
    start, end = _(phrases.LEVELS[move.start]), _(phrases.LEVELS[move.end])
    return end if start == end else _("from {start} to {end}", start=start, end=end)


def _feel(move: Move) -> list[str]:
    if "dynamics" in move.chosen:
        return [_("with the feel you chose")]
    ways, felt = dict(phrases.WAYS), move.feel
    if move.kind == "travel" and move.pathway == "curved":
        ways["indirect"], felt = phrases.CURVED, felt - {"direct"} | {"indirect"}
    return [_(way) for one, way in ways.items() if one in felt]


def _aside(move: Move) -> str:
    """To which side; where a move leaves it open, only its picture has to choose one."""
    if move.sideless and move.direction == "sideways":
        return _("to one side")
    return _("to the left") if move.left else _("to the right")


def _way(move: Move) -> str:
    if move.towards and move.sideless and move.direction in ("sideways", "diagonal"):
        if move.towards in phrases.TOWARDS:
            return _(phrases.TOWARDS[move.towards])
        return towards_in_words(move.towards, NO_NAMES)
    if move.direction == "sideways":
        return _aside(move)
    if move.direction == "diagonal":
        return _("diagonally to the left") if move.left else _("diagonally to the right")
    return of_schema(move.direction) if move.direction else ""
