"""The phrases that `body_words.py` puts together: by level, step, jump, gesture, shape and feel."""

from __future__ import annotations

from build_tools.page_words.words import N_, NN_

LEVELS = {"low": N_("low"), "middle": N_("half high"), "high": N_("high")}
STEPS = {
    "side": NN_("{number} side-step", "{number} side-steps"),
    "gallop": NN_("{number} gallop", "{number} gallops"),
    "skip": NN_("{number} skip", "{number} skips"),
    "hop": NN_("{number} hop", "{number} hops"),
    "run": NN_("{number} running step", "{number} running steps"),
    "tiptoe": NN_("{number} step on tiptoe", "{number} steps on tiptoe"),
    "creep": NN_("{number} low, creeping step", "{number} low, creeping steps"),
    "stamp": NN_("{number} stamp", "{number} stamps"),
    "crawl": NN_("{number} step on hands and knees", "{number} steps on hands and knees"),
    "roll": NN_("roll", "rolls"),
}
"""Kinds of step that have a name of their own; any other is a step."""
ANY_STEPS = {
    "small": NN_("{number} small step", "{number} small steps"),
    "big": NN_("{number} big step", "{number} big steps"),
}
STEP = NN_("{number} step", "{number} steps")
STEPPED = {
    "roll": N_("curled up"),
    "pull": N_("one arm pulled back to the hip"),
    "push": N_("both arms pushing forwards"),
    "float": N_("arms floating out to the sides"),
}
"""What the arms or the body do in steps of some kinds."""
JUMPS = {
    "tucked": N_("tucked up in the air"),
    "star": N_("arms and legs wide in the air"),
    "small": N_("small, arms low"),
    "reach": N_("long and thin in the air, arms up"),
}
GESTURES = {
    "clap": N_("hands clap in front"),
    "snap": N_("arms bent at the sides open and snap shut"),
    "flick": N_("hands flick, fingers spread"),
    "ripple": N_("arms and fingers ripple in front"),
    "pat": N_("both hands pat"),
    "press": N_("both arms press forwards and down"),
    "lift": N_("both arms lift forwards and up"),
    "pull": N_("one arm pulls back, the other stays in front"),
    "wave": N_("one hand waves above the head"),
    "point": N_("one arm points"),
    "stretch": N_("arms stretch"),
    "open": N_("arms open wide"),
    "close": N_("arms close in front"),
    "swing": N_("arms swing, one up and one down"),
    "bow": N_("the body bows"),
    "lean": N_("lean, the feet still"),
}
PARTS = {
    "lips": N_("one finger goes to the lips"),
    "ear": N_("one hand goes behind the ear"),
    "elbow": N_("elbows out to the sides"),
    "shoulder": N_("shoulders lift"),
    "head": N_("the head moves"),
    "foot": N_("one foot lifts out to the side"),
    "leg": N_("one leg lifts out to the side"),
    "knee": N_("one knee lifts"),
    "hip": N_("the hips push out"),
    "back": N_("the back rounds"),
    "chest": N_("the chest opens"),
}
CHOSEN_PARTS = {
    "flick": N_("the part you chose flicks"),
    "knock": N_("the part you chose knocks"),
    "open": N_("the part you chose opens wide"),
    "ripple": N_("the part you chose ripples"),
    "stretch": N_("the part you chose stretches"),
    "swing": N_("the part you chose swings"),
}
"""What a part of the body does that pupils choose, of which its picture shows one."""
SIZES = {"small": N_("small"), "big": N_("big")}
SHAPES = {
    "curled": N_("curled up small"),
    "wide": N_("wide, arms and legs apart"),
    "tall": N_("tall and narrow"),
    "twisted": N_("twisted, the shoulders one way and the feet another"),
    "balance": N_("balanced on one foot"),
    "crouched": N_("crouched"),
    "standing": N_("standing"),
}
AT_THE_HEAD = {
    "lips": N_("a finger to the lips"),
    "ear": N_("a hand behind one ear"),
}
"""What is held where one hand is at the head, standing or sitting."""
HALF_HIGH = {
    "tall": N_("the knees bent, arms round you"),
    "curled": N_("the knees and back bent, arms round you"),
}
"""Shapes that are others half high: neither tall nor small, as they are drawn."""
SEATED = {
    SHAPES["crouched"]: N_("folded forwards"),
    SHAPES["standing"]: N_("sitting upright"),
    HALF_HIGH["tall"]: N_("sitting upright, arms round you"),
    HALF_HIGH["curled"]: N_("the back bent, arms round you"),
}
TURNS = {
    90: N_("turn a quarter round {way}"),
    180: N_("turn half way round {way}"),
    270: N_("turn three quarters round {way}"),
}
TOWARDS = {
    "partner": N_("towards your partner"),
    "centre": N_("towards the middle"),
    "home": N_("towards your own mark"),
}
WAYS = {
    "strong": N_("strongly"),
    "light": N_("lightly"),
    "sudden": N_("suddenly"),
    "sustained": N_("slowly and evenly"),
    "direct": N_("straight there"),
    "indirect": N_("by a winding way"),
    "free": N_("freely"),
    "bound": N_("held back"),
}
CURVED = N_("on a curve")
"""How one goes who goes by a winding way along a curve: the curve is the way."""
