"""The words by which rules of safety know how pupils move, and what keeps it safe.

The lists are short on purpose. Where wording is open to doubt, nothing is found.
"""

from __future__ import annotations

from build_tools.sentences.wordings import wording

FAST = wording(
    "run/gallop/sprint/chas/hurtl/rush/dash/charg/zoom/rac",
    r"""
      running | gallop(?:s|ing)? | sprint(?:s|ing)? | chas(?:e|es|ing) | hurtl(?:e|es|ing)
    | rush(?:es|ing)? | dash(?:es|ing)? | (?<!in[ ])charg(?:e|es|ing) | zoom(?:s|ing)?
    | rac(?:e|es|ing)
    | runs?[ ](?:in|into|to|towards|around|round|across|between|out|away|past|freely|fast|quickly
      |lightly|anywhere|through[ ](?:the[ ])?(?:space|hall|gaps?))
    """,
)
TRAVEL = wording(
    "walk/travel/skip/run/step/stream",
    r"walk\w* | travel\w* | skip\w* | run(?:s|ning)? | side-?step\w* | stream\w*",
)
_SIGNALS = (
    "taps?|claps?|pats?|patted|drum|signal|whistle|bell|shaker|tambourine|beat|music|sound|silence"
    "|chime|cymbal|roll|call|hand|flag|word|cue"
)
STOP_SIGNAL = wording(
    "stop/freez/still/halt",
    rf"""
      stop[ -]signal | signal[ ](?:to|for)[ ]stop | stop[ ]on
    | (?:{_SIGNALS})\b [^.!?\n]{{0,40}}\b (?:stops?|freezes?|still|halt)
    | (?:stop|freeze|still|halt)\b [^.!?;\n]{{0,30}}\b (?:{_SIGNALS})
    | (?:say|shout|call)[ ]["'“‘]?(?:stop|freeze)
    | when[ ]i\b [^.!?\n]{{1,40}}\b (?:stop|freeze|halt)
    | (?:stop|freeze|halt)[ ]when[ ]i
    """,
)

FLOOR_CHECK = wording(
    "floor",
    r"""
      floors?\b [^.!?\n]{0,60}\b
        (?:dry|clear|clean|swept|safe|slip\w*|splinters?|spills?|check\w*|look|free)
    | (?:check|sweep|dry|clean|clear|walk|look[ ]at|mop)\b [^.!?\n]{0,30}\b floors?
    """,
)
BARE_FEET = wording(
    "bare/off",
    r"bare[ -]?(?:foot|feet|footed) | (?:shoes|socks)[ ]and[ ](?:socks|shoes)[ ]off",
)

ON_KNEES = wording(
    "kneel/crawl/knee/fours/drop/fall/crash",
    r"""
      kneel(?:s|ing)? | crawl(?:s|ing)? | knee[ -]slides?
    | on[ ](?:to[ ])?(?:your[ ]|their[ ]|both[ ]|one[ ]|the[ ]|hands[ ]and[ ])?knees?
    | on[ ]all[ ]fours
    | (?:drop|fall|crash)(?:s|es|ping|ing)?[ ](?:down[ ])?(?:to|on|onto)[ ]
      (?:to[ ])?(?:the[ ]|your[ ]|their[ ])?(?:floor|ground|knees?|hands|bottoms?|backs?)
    """,
)
SOFTER = wording(
    "mat/soft/gent/slow/control/light/short/brief/few/bent/pad/carpet/choo/choice/or ",
    r"""
      mats? | soft\w* | gent(?:le|ly) | slow\w* | control\w* | lightly | short | briefly | few
    | through[ ]bent[ ]knees | padded | pads? | carpet | choose | choice
    | (?:feet|foot|standing|stand|crouch\w*|sitting|sit)[ ]or[ ](?:on[ ])?(?:\w+[ ])?
      (?:knees?|kneel\w*)
    | or[ ](?:stand|sit|crouch|stay|step|lunge|squat|bend)\w*
    """,
)
_JUMPS = r"(?:jump|hop|leap|bounc|skip)\w*"
AGAIN = wording(
    "jump/hop/leap/bounc/skip",
    rf"""
      keep[ ](?:on[ ])?(?:jumping|hopping|leaping|bouncing|skipping)
    | {_JUMPS}\b [^.!?;\n]{{0,30}}\b (?:non-?stop|without[ ]stopping|again[ ]and[ ]again
      |over[ ]and[ ]over|for[ ](?:a|one|two|three|four|five|[0-9]+)[ ]minutes?)
    | (?:[2-9][0-9]|[1-9][0-9][0-9]|twenty|twenty-four|thirty|thirty-two|forty|fifty|a[ ]hundred)
      [ ](?:\w+[ ]){{0,2}}{_JUMPS}
    | {_JUMPS}[ ](?:[2-9][0-9]|twenty|thirty|forty|fifty|a[ ]hundred)[ ]times
    """,
)
FEWER = wording(
    "rest/few/low/small/rise/toe/mat/in place/instead/stop/choo/no more/at most",
    r"""
      rests? | few | low | small | rise\w* | tip-?toes? | toes | mats? | in[ ]place[ ]of | instead
    | stop[ ]when | fewer | choose | no[ ]more[ ]than | at[ ]most
    """,
)

BACKWARDS = wording(
    "backward",
    r"""
      (?:walk|run|step|travel|mov|jump|hop|skip|go|creep|glid|strid|rush|side-?step|shuffl)
      (?:e|s|es|ed|ing|ning|ping)?[ ](?:\w+[ ]){0,3}?backwards?
    """,
)
LOOK_BACK = wording(
    "back/behind/shoulder",
    r"""
      backwards?\b [^.!?\n]{0,60}\b
      (?:look\w*|slow\w*|small|short|room|empty|space|gaps?|walk\w*|one[ ]at[ ]a[ ]time)
    | (?:look\w*|slow\w*|small|short|room|space|gaps?|one[ ]at[ ]a[ ]time)\b
      [^.!?\n]{0,60}\b backwards?
    | over[ ]\w+[ ]shoulders?
    | (?:look|glanc|check|peep|peek)\w*\b [^.!?\n]{0,30}\b behind
    | (?:room|space|clear|empty|nobody|no[ ]one)[ ](?:is[ ])?behind
    | look\w*[ ]back[ ](?:first|before|as|while)
    | (?:small|short|slow\w*|few|careful\w*)[ ](?:\w+[ ]){0,2}?(?:steps?|walk\w*)\b
      [^.!?\n]{0,20}\b back
    | (?:step|walk|go|mov|travel|creep)\w*[ ](?:\w+[ ]){0,3}?back\b [^.!?\n]{0,40}\b
      (?:slow\w*|small|short|look\w*|careful\w*)
    | (?:slow\w*|careful\w*)[ ](?:step|walk|go|mov|travel|creep)\w*[ ](?:\w+[ ])?back
    | (?:step|walk|go|mov|travel|creep)\w*[ ](?:slow\w*|careful\w*)[ ]back
    | back[ ](?:\w+[ ]){0,3}?(?:small|short|slow|few|careful)[ ](?:\w+[ ])?steps?
    """,
)
CLOSE = wording(
    "back to back/shoulder to/squeez/in and out/weav/dodg/together/as close/huddl",
    r"""
      back[ ]to[ ]back | shoulder[ ]to[ ]shoulder
    | squeez(?:e|es|ing)[ ](?:through|past|between|together)
    | in[ ]and[ ]out[ ]of[ ](?:each[ ]other|one[ ]another|the[ ]others)
    | weav(?:e|es|ing)[ ](?:in[ ]and[ ]out|between|through|past)
    | dodg(?:e|es|ing)[ ](?:between|through|past|each|around)
    | (?:close|closely|packed|tightly)[ ]together | as[ ]close[ ]as | huddl(?:e|es|ing)
    """,
)
ROOM_BETWEEN = wording(
    "touch/length/width/apart/slow/walk/careful/gap/room/space/bump/one at",
    r"""
      touch\w* | arm'?s[ ]length | hand'?s[ ]width | apart | slow\w* | walk\w* | careful\w*
    | gaps? | (?:room|space)[ ](?:between|around|to[ ]pass|for|on) | empty[ ]space | bump\w*
    | one[ ]at[ ]a[ ]time
    """,
)
KEEP_APART = wording(
    "touch/length/width",
    r"(?:nobody|never|not|no|without)[ ](?:\w+[ ])?touch\w* | arm'?s[ ]length | hand'?s[ ]width",
)

SPIN = wording(
    "spin/whirl/twirl/pirouet/turning/turn fast/turn quick/turn round/turn and",
    r"""
      spin(?:s|ning)? | whirl(?:s|ing)? | twirl(?:s|ing)? | pirouett(?:e|es|ing)
    | keep[ ](?:on[ ])?turning
    | turn[ ](?:fast|quickly|faster|round[ ]and[ ]round|and[ ]turn)
    """,
)
SPIN_KEPT_SAFE = wording(
    "dizz/eyes open/chang/turn/spin/whirl/twirl",
    r"""
      dizz\w+ | eyes[ ]open | chang(?:e|ing)[ ]sides?
    | (?:one|once|slow|slowly|small|half|single)[ ](?:\w+[ ])?(?:turn|spin|whirl|twirl)\w*
    | (?:turn|spin|whirl|twirl)\w*,?[ ](?:\w+[ ]){0,4}?(?:slow|slowly|slower|once|small|half|one)
    | (?:turn|spin|whirl|twirl)\w*\b [^.!?\n]{0,40}\b (?:other|both|each|either)[ ]ways?
    """,
)

_PROPS = (
    r"(?:hoop|rope|scar(?:f|ve)|ribbon|beanbag|bean[ ]bag|cone|mat|ball|stick|cane|cloth|fabric"
    r"|sheet|leaf|leave|paper|newspaper|card|umbrella|feather|blanket|hat|bag|box|boxe|block|stone"
    r"|shell|prop|picture|quoit)s?"
)
PROPS_DOWN = wording(
    "floor/ground/down/the hall/the room/the space",
    rf"""
      (?:put|lay|lie|place|drop|leave|scatter|set|spread|throw|toss)(?:s|es|ting|ing|ping)?\b
      [^.!?;\n]{{0,30}}\b {_PROPS}\b [^.!?;\n]{{0,30}}\b
      (?:on[ ]the[ ](?:floor|ground)|down
      |(?:around|round|about|across|in)[ ]the[ ](?:hall|room|space))
    | {_PROPS}[ ](?:are[ ]|is[ ]|lie[ ]|lies[ ])?(?:\w+[ ])?on[ ]the[ ](?:floor|ground)
    """,
)
PROPS_AWAY = wording(
    "pick/away/edge/side/wall/back/basket/tray/box/way/nobody/not /never/round/non-slip/tape/walk"
    "/clear",
    r"""
      pick(?:s|ed|ing)?[ ](?:\w+[ ]){0,2}?up | away
    | (?:to|at|by|along|against|beside)[ ](?:the[ ]|one[ ])?(?:edges?|sides?|walls?|back)
    | basket | tray | in[ ]a[ ]box | out[ ]of[ ]the[ ]way | nobody[ ](?:steps|treads|lands)
    | (?:not|never)[ ](?:step|tread|land|jump)\w* | go[ ]a?round | around[ ](?:it|them)
    | non-slip | tape\w* | walk\w*[ ](?:a?round|between)
    | clear[ ](?:\w+[ ]){0,2}?(?:floor|away|them|it)
    """,
)
