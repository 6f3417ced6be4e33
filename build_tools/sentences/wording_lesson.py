"""The words by which rules of dance, breadth and lesson know a thing in what an author wrote.

The lists are long where finding a word keeps a rule silent, and short where it makes one speak.
"""

from __future__ import annotations

import re


def _words(pattern: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{pattern})\b", re.IGNORECASE)


SEEN_OR_HEARD = _words(
    r"drums?|beats?|taps?|clap(?:s|ping)?|music|sounds?|songs?|bells?|shakers?|rolls?|voices?|"
    r"words?|calls?|says?|said|sings?|hums?|whispers?|shouts?|claves|chime|counts?|counting|"
    r"counted|breaths?|breathes?|breathing|silence|silent|quiet|stops?|starts?|begins?|ends?|"
    r"hands?|arms?|heads?|eyes?|looks?|sees?|hears?|nods?|raises?|lifts?|lowers?|steps?|foot|"
    r"feet|turns?|still|stillness|freezes?|moves?|moving|lands?|reach(?:es)?|sinks?|rises?|"
    r"leader|teacher|partners?|lights?|signals?|cards?|letters?|touch(?:es)?|last|first|next|"
    r"everyone|everybody|all|stands?|sits?|shapes?|faces?|stamps?|slaps?|gong"
)
"""Something in a cue that pupils can see, hear or count."""

NOBODY_NOTICES = _words(
    r"when(?:ever)? (?:(?:you|they|we|he|she|it|pupils|dancers|people) )?(?:(?:are|"
    r"is|feels?) )?(?:ready|right|able|in the mood)|in (?:their|your|its|his|her) own time|"
    r"when(?:ever)? (?:they|you|it|we) feels?|feels? (?:right|ready)|by instinct|"
    r"sens(?:e|es|ing) (?:it|the moment)|at some point|after a (?:while|bit)|eventually|"
    r"naturally|whenever|when it suits|as (?:they|you) (?:wish|like|please)|any ?time"
)
"""A cue that happens inside a pupil, or at no moment anyone could name."""

NO_CUE = re.compile(r"\W*(?:none|nothing|no cue|not needed|n/?a)?\W*", re.IGNORECASE)
"""The whole of a cue that says there is none."""

TIME_IS_UP = re.compile(
    r"\W*(?:at|after|on|when|once)\b.*\b(?:over|up|finished|done|time|seconds?|minutes?|while)\W*",
    re.IGNORECASE,
)
"""The whole of a cue that only says time has passed."""

GETS_THERE = _words(
    r"(?:walk|run|step|side-step|travel|creep|skip|gallop|jog|march|"
    r"tiptoe|crawl|roll|slid|glid|drift|float|flow|spiral|wander|go|"
    r"com|gather|spread|scatter|join|meet|return|find|form|mak|draw|"
    r"drain|melt|shuffl|stream|weav|follow|lead|peel|fan|wind|unwind|"
    r"pull|push|rush|swim|fl|leap|hop|shift|turn (?:to|into)|clos|split|"
    r"circl|link|catch|blow|wash|sail|hurr|trot|bounc|jump|crowd|huddl|"
    r"back away|sneak|prowl|tread|pac|stroll|parad)(?:e|s|es|y|ies|ing|ping|ning|ting|ming)?|"
    r"into (?:a|the|your|their|two|one|pairs|threes|fours|lines?|place)|"
    r"to (?:your|their) (?:partner|group|place|line|circle|row)|"
    r"moves? (?:to|into|in|out|back|away|towards|apart)"
)
"""A word by which pupils get from one place to another."""

EVERYONE = _words(
    r"everyone|everybody|all|every|each|both|whole|class|pupils|dancers|children|the rest|"
    r"(?:the )?others|anyone|either|whoever|\d+ (?:to|and|,).*"
)
"""Words that leave nobody out of an ending."""

SOME_ONLY = _words(
    r"half|ones|twos|odds?|evens?|partner (?:one|two|a|b)|leaders?|some|few|most|"
    r"one (?:pupil|dancer|of|group|pair|half|in)|a (?:pupil|dancer|group|pair)|numbers? \w+|"
    r"dancers? (?:\d|one|two|three|four|a|b)|two (?:pupils|dancers)"
)
"""Words that name only a part of the class in an ending."""

WAITS = _words(
    r"wait(?:s|ing)?|still|stillness|holds?|holding|rests?|freezes?|repeats?|again|twice|"
    r"watch(?:es)?"
)
"""Words that tell a part what to do while the other part goes on."""

CONTRAST = _words(
    r"contrast\w*|sudden\w*|against|opposites?|explod\w*|bursts?|snaps?|surpris\w*|shock\w*|"
    r"jolts?"
)
"""Words by which a jump from one quality to its opposite is meant."""

SPACE = _words(
    r"high|low|middle|levels?|pathways?|curv\w*|zigzags?|straight|spirals?|big|bigger|small|"
    r"smaller|wide|narrow|forwards?|backwards?|sideways|diagonal\w*|up|down|near|far|circles?|"
    r"lines?"
)
DYNAMICS = _words(
    r"strong\w*|light|lightly|slow\w*|quick\w*|sudden\w*|smooth\w*|soft\w*|sharp\w*|gentl\w+|"
    r"fast\w*|heav\w+|jerky|speeds?|energy|sustained|floppy|stiff\w*|bouncy"
)
WITH_WHOM = _words(
    r"partners?|pairs?|threes|fours|groups?|mirror\w*|follow\w*|lead|leads|leaders?|canon|"
    r"in turn|match\w*|circles?|rows?|facing"
)

NEEDS_A_PARTNER = _words(
    r"partners?|the other|each other|one \w+[^.;]*(?:the other|one)|ones|twos|swap|mirror\w*|"
    r"swaps|face to face"
)
"""A task that one pupil over has nobody to do it with."""

ONE_OVER = _words(
    r"one (?:over|left|extra|spare)|one more (?:pupil|dancer|child|joins|makes|dances)|"
    r"left over|odd (?:one|pupil|number of)|"
    r"(?:a|makes?|as|one) three|threes|an extra|extra (?:pupil|dancer)|spare|"
    r"uneven|without a partner|no partner|(?:a|one) pair (?:over|left)|"
    r"join(?:s)? (?:another|a pair|the nearest)|nobody left|"
    r"share(?:s)? a (?:number|part|partner)|alone if|"
    r"(?:dances?|works?|goes|is|pairs?|partners?) (?:up )?with the teacher"
)
"""What becomes of one pupil over."""

GETS_INTO_GROUPS = _words(
    r"number off|get into|find|join|turn to|stand (?:by|beside|with|near|next)|"
    r"sit (?:by|beside|with|near|next|in)|nearest|next to|two (?:pairs|threes)|"
    r"(?:your|their|own|same|last week's) (?:own )?(?:partner|pair|"
    r"three|four|five|six|group|row|table|half)|keep (?:your|the|in)|in (?:your|the same)|"
    r"stay (?:in|with)|mak(?:e|ing) (?:a|groups|fours|threes|fives|sixes|pairs|rows)|"
    r"(?:two|three|four|five|six) (?:of you|to a|in (?:a|each))|beside|counted off|tables? |"
    r"face (?:a|your)|choose (?:a|your)|as before"
)
"""What is said to get pupils into groups, wherever in a step it stands."""

LENGTH = _words(
    r"counts?|counting|\d+|eights?|seconds?|phrases?|bars?|beats?|long|longer|short|length|"
    r"once|twice|times|two|three|four|five|six|seven|eight|ten|twelve|sixteen|thirty-two|"
    r"breaths?|half a minute"
)
"""How long, or how much of it."""

KEPT = _words(
    r"cards?|words?|say|says|saying|said|show|shows|count|counting|repeat|again|draw|drawing|"
    r"write|chant\w*|keep|keeping|remember\w*|set|sets|fix\w*|link\w*|practis\w+|order|learn|"
    r"name|names|naming|sing|number|agree|same|match\w*|until|twice|dance it|over and over|"
    r"call|teach|pictures?|strip|rehears\w+"
)
"""How what is made will be remembered."""

ROLE = _words(
    r"(?:the|a|one|each) (?:new )?(leader|caller|conductor|captain|"
    r"chief|soloist|drummer|narrator|storyteller)"
)
"""A part that only one of a group has."""

TWO_ROLES = _words(
    r"ones|twos|odds?|odd numbers|evens?|even numbers|partner (?:one|two|a|b)|leaders?|"
    r"followers?|callers?|half"
)
"""Names for the two sides of a passage in which they do different things."""

SWAPS = _words(
    r"swap\w*|chang(?:e|es|ing) (?:over|roles|places|parts|leaders?|jobs|round|sides)|"
    r"tak(?:e|es|ing) (?:a )?turns?|in turn|turn about|(?:the )?other way (?:round|about)|"
    r"(?:a )?(?:new|different|another|next) (?:leader|caller|conductor|"
    r"captain|chief|soloist|drummer|one|narrator|storyteller|dancer|pupil)|has a (?:go|turn)|"
    r"rotat\w+|everyone (?:leads|has|is)|revers\w+|other half|"
    r"pass(?:es)? (?:it|the lead) ?(?:on)?|then (?:twos|evens|partner two)|"
    r"each (?:pupil|dancer|of (?:you|them))|another (?:leads|takes)"
)
"""How everyone gets a go at a part."""

WARMS_ANYTHING = _words(
    r"warm(?:s|ing)?|every (?:part|move|joint)|each (?:part|move|joint)|body parts?|joints?|"
    r"whole body|all over|knees?|ankles?|moves (?:you|we|of|from)|as you will"
)
"""A warm-up that says it gets the body ready, whatever it is made of."""

NO_MOVING = _words(
    r"sit|sits|sitting|lie|lying|listen|listens|watch|watches|talk|talks|think|read|discuss"
)
"""A warm-up in which nobody moves."""

KINDS_IN_WORDS = {
    "travel": _words(
        r"(?:walk|run|skip|step|side-step|gallop|travel|jog|march|creep|"
        r"rush|prowl|dash|wander|dodg|chas|shuffl|scuttl|glid|slid|stroll|"
        r"trot|swim|fl|driv|mov|go)(?:e|s|es|y|ies|ing|ping|ning)?|tiptoe\w*|pathways?|"
        r"round the (?:hall|room|space)|windy day|follow\w*"
    ),
    "turn": _words(
        r"turn(?:s|ing)?|spin(?:s|ning)?|twist(?:s|ing)?|twirl(?:s|ing)?|whirl(?:s|ing)?"
    ),
    "jump": _words(
        r"jump(?:s|ing)?|hop(?:s|ping)?|leap(?:s|ing)?|bounc(?:e|es|ing)|spring(?:s|ing)?|"
        r"jacks|skip(?:s|ping)?|on (?:the|your) toes"
    ),
    "gesture": _words(
        r"(?:reach|stretch|swing|shak|point|open|clos|clap|circl|punch|"
        r"wav|shrug|flick|press|pull|push|nod|unfold|fold|curl|draw|wiggl|"
        r"grow|shrink)(?:e|s|es|ing|ging)?|arms?|hands?|fingers?|shoulders?|elbows?|heads?|"
        r"shapes?"
    ),
    "transfer": _words(
        r"(?:rock|sway|bend|sink|ris|lean|fall|melt|lung|roll|settl|crouch|"
        r"squat|tip|drop|balanc|grow|shrink|stamp|curl|lower)(?:e|s|es|ing|ping)?|knees?|"
        r"up and down"
    ),
}
"""The kinds of action, but stillness, as a task asks for them."""

_ONE_AT_A_TIME = re.compile(
    r"\b(one|two|three|four) (?:group|pair|four|three|five|six|row|pupil|dancer)s? at a time\b"
    r"|\b(?:group|pair|row|four|three) (?:by|after) (?:group|pair|row|four|three)\b"
    r"|\b(?:each|every) (?:group|pair|row|four|three|five|six|pupil) "
    r"(?:shows?|dances?|performs?)(?: it)? (?:alone|in turn|by itself|to the (?:whole )?class"
    r"|for the (?:whole )?class)\b"
    r"|\bone (?:group|pair|row|four|three|five|six|pupil) after (?:another|the other)\b",
    re.IGNORECASE,
)
_NUMBERS = {"one": 1, "two": 2, "three": 3, "four": 4}


def groups_at_a_time(text: str) -> int | None:
    """How many groups show at once where `text` says they show in turn; None where it does not."""
    found = _ONE_AT_A_TIME.search(text)
    if found is None:
        return None
    return _NUMBERS.get((found.group(1) or "one").lower(), 1)
