"""Pupils who cannot do it, or are one over, sent to watch."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "who": (
        "anyone anybody those whoever pupil child person people who everyone someone somebody "
        "they he she dancer"
    ),
    "cannot": (
        "cannot can't unable struggle late last slow slower slowest behind plaster tired left "
        "spare over odd leftover without unsure injured wrong miss forget not n't asthma "
        "hearing frame wheelchair crutches tricky hard difficult weak weaker low lower less "
        "least dizzy hurt scared nervous limping sore bad poorly broken sprained injury "
        "disability pain disabled cast condition sure"
    ),
    "watch": (
        "=sit =sits watch =watches wait =waits mark =marks score =scores referee =rest =rests "
        "alone misses observe judge timekeeper spectator spectators onlooker onlookers "
        "audience spectate umpire scorer scorekeeper"
    ),
    "stay": "=stand =stands =stay =stays =wait =waits go =remain remain be =keep keep move sit",
    "edge": "=side =sides edge edges wall bench sideline sidelines benches chairs mats",
    "odd": "odd left spare extra leftover remaining third fifth seventh ninth",
    "judge": (
        "judge referee umpire scorer scorekeeper timekeeper spectator audience photographer "
        "cameraman watcher onlooker helper"
    ),
}

SENT_TO_WATCH = Saying(
    """
    @who ~~5 @cannot ~~8 @watch
    @who ~~5 @cannot ~~8 =sit|=sits|=stay|=stays|=stand|=stands|=step|=steps|=drop|=drops|=miss|
        =go|=goes ~1 out
    @who ~~5 @cannot ~~8 @stay ~4 at|by|on|to|along|off|from|near ~2 @edge
    less|least able|confident|mobile|agile|experienced ~~8 @watch
    weak|weaker|slow|slower|struggling|lower ~1 group|dancers|children|pupils|ones|ability
        ~~8 @watch
    if ~3 @cannot|wobble|wobbling|fall ~~8 =sit|watch|rest|=wait|=stay ~4 by|on|at|against|near
        ~2 @edge
    odd|left|spare|last|slowest|extra|leftover|remaining|third|fifth|seventh one|pupil|person|
        dancer|pair|child|over|out|=number ~~6 sit|sits|watch|watches|rest|rests|misses
    @odd one|pupil|person|dancer|child|over|out|=number ~~6 =score|judge|=judges|referee|observe|
        observes
    @who ~~5 @cannot ~~8 skip|skips ~2 part|this|it|that|bit
    @who ~~5 @cannot ~~8 =sit|=sits ~3 at|by|on ~1 @edge|stage
    be|become|is|=act ~2 umpire|referee|judge|scorer|scorekeeper|timekeeper|spectator
    if|whoever|anyone ~~4 drop|drops|move|moves|laugh|laughs|blink|blinks|touch|touches|late
        ~~6 =sit|=sits ~1 down|out
    whoever|anyone|anybody|slowest ~~8 is|are|be =out !of|in|on|to|into|with|there|from
    @odd ~1 one|pupil|person|dancer|child ~3 help|helps ~2 teacher|me|you|adult
    leave|leaves ~2 @who ~6 out ~2 of|$
    @odd one|pupil|person|dancer|child|over|out ~3 look|looks on
    @odd one|pupil|person|dancer|child|over ~4 wait|waits !for|#1..
    one|anyone|pupil ~1 left over ~4 sit|watch|wait|alone|work|out
    =out sit|sits|watch|watches
    you|they|pupil|pair|he|she ~1 are|is|be ~1 =out !of|in|on|to
    you|they =out $
    if|when|whoever|anyone|last|slowest|first ~~8 you|they|he|she =out !of|in|on|to|into|with|there
    should|must|can|may|had ~2 watch|sit ~2 this|the ~1 unit|lesson|part|dance|one !of
    keep|keeps|take|takes ~1 score|scores ~4 side|bench|wall
    one ~2 keep|keeps ~1 score|scores|time
    sit|sat ~1 out ~1 this|that|the|until|for|of|if
    be|are|=re ~1 out ~3 sit|wait|wall|bench|side
    last ~3 sit|sits ~1 down|out !<week|lesson|time|year|count|beat|from
    out ~3 if ~4 miss|wrong|late|last|wobble|move|fall|touch|laugh
    out ~~4 join|be|become ~2 audience|spectators|watchers|judges
    let|have|make|ask|get|making|letting him|her|them ~2 be|act|as|into ~2 @judge
    give|hand|let|lend ~2 him|her|them|child|pupil ~4 clipboard|stopwatch|checklist|tick-list|
        scoresheet|score-sheet|camera|whistle|tablet
    have|take ~1 n:rest|seat|break|breather|sit-down ~~6 by|on|at|against ~2 @edge|bars
    wheelchair|wheelchairs ~~4 turn|turns|hold|holds|show|shows|keep|keeps|press|work|hand|
        give|look|help ~4 card|cards|score|time|sign|signs|music|player|drum|triangle|
        poster|prop|props|door !while|as
    as spectators|spectator|onlookers|bystanders
    look|looks on ~3 until|and|while|for|from|at
    """,
    _LISTS,
)
"""A pupil who cannot do it, or is one over, is sent to watch."""

LEFT_WITHOUT = Saying(
    """
    @who ~3 without|not|n't|no|cannot ~4 partner|pair|group|four|three|place|space|kit|shoes
        ~3 wait|waits|watch|watches|=sit|=sits|=rest|=rests|=stay|=stays|alone|observe|observes
    """,
    _LISTS,
)
"""The same of one who is left without something."""
