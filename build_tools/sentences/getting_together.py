"""How pupils get into groups: who with whom, and where one over goes."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

LISTS = {
    "meet": (
        "join meet find link pair match visit greet collect invite choose pick fetch approach seek "
        "team combine merge connect double add bring call spot catch get take ask welcome hook "
        "group gather adopt grow return wave go walk come move step turn face stand sit be stay "
        "stick dance work partner settle travel run skip tiptoe look keep share"
    ),
    "beside": (
        "to by beside next near nearest with facing behind opposite alongside towards at onto over "
        "across around round before"
    ),
    "one_more": (
        "pair partner person people neighbour somebody someone anybody anyone friend classmate "
        "dancer pupil child two couple twosome name one"
    ),
    "others": (
        "pair two couple twosome partner person people neighbour friend dancer pupil child "
        "somebody someone"
    ),
    "which": (
        "nearest closest next first second other another new near close neighbouring nearby "
        "adjacent opposite different same beside behind free left right that"
    ),
    "own": "your their own same usual old last earlier =our these familiar",
    "team": "four three five six group row team pool crew gang table =line square circle partner",
    "teacher": "i teacher adult we me",
    "sort": "card colour color label ticket sticker band bib bead ribbon picture badge counter",
}

WHO_WITH_WHOM = Saying(
    """
    @meet ?up|together ~4 @which ~3 @others !of
    @meet ~2 @beside ~4 @others|=you !of
    @meet ~2 @beside ~4 somebody|someone|person|people
    join|meet|find|link|pair|match|greet|visit|choose|pick|fetch|approach|invite|add|adopt|collect|
        bring|take|ask|get|combine|call|spot ?up|together|with ~3 @one_more !of|moment|minute|way
    @others ~3 join|meet|combine|merge|unite|visit|greet|link
    @others ~3 @which|with|and ~2 @others !of
    you|partner and ~3 @others|friend|neighbour
    #2 =pairs|twos|couples|threes !of ~3 make|become|form|meet|join|together|combine|be|equal|to|
        in|at|share
    both =pairs|twos|couples !of
    #2 =pairs|twos|couples|people|others|dancers|friends|more !of
    nearest|closest|next|near|close ~2 @others|you|four|three|five|six
    turn|walk|go|look|reach|step ~2 left|right|behind|round|around ~4 @others
    number|letter|name ?yourselves|yourself off|from|round|=to
    count|number ~1 off
    =ones|=twos|=threes|=as|=bs|number|odds|evens ~3 find|meet|with|go|together|join
    @teacher ~2 point|count|tap|touch|name|number|call|read|sort|choose|pick|deal|give|place|put|
        pair ~6 you|name|@others|@sort|off
    @sort ~~8 together|match|matching|same|join|find|meet
    match|matching|same ~2 @sort|number|letter|shape
    those|people|everyone|anyone|all|pupils ~3 at|on|with|in ~2 same|table|bench|side|row|line
    first|next|last #2..6 ~3 =in|of|line|register|row|list
    table ~3 be|make|is|group|four
    #2..5 =others|=friends|=neighbours|more|people|nearest|closest
    #2..6 of you
    you #3..6
    join|add|take|bring ~3 one more
    whose ~5 meet|same|match
    which @others ~2 @which
    join|meet|greet|visit|find|collect|fetch|approach =them
    join|pair|meet|team ?up with *
    all the ~3 together
    one|two|another|someone|somebody of your|the|their|each|every ~1 @team
    ask ~3 join
    ?every|each pair ~8 pair|two
    #1..8 ~1 with ?number #2..8
    """,
    LISTS,
)
"""Words that bring pupils together: which pair, which person, which card."""

OWN_GROUP = Saying(
    """
    with|to|face|facing|by|beside|opposite|find|keep|meet|join|behind|stay|go|return|get|
        back ~3 partner|pair
    @own ~2 @team
    @team|=groups|=pairs|=threes|=fours ~3 last ~2 week|lesson|time|turn
    =groups|=pairs|=threes|=fours|=fives|=sixes ~1 again|before|yesterday
    """,
    LISTS,
)
"""A group that pupils are in already: your partner, last week's fours."""

NEEDS_A_PARTNER = Saying(
    """
    partner|each-other|mirror|twin
    one|=ones|=a|leader|first|=odds ~~12 other|=twos|two|=b|follower|partner|second|=evens
    ?face|back|side|shoulder to face|back|side|shoulder
    swap|change|switch ~2 over|roles|parts|places|leader|about
    swap !=left|=right|the|hand|foot|leg|arm|move|float|spin
    take|in ~2 =turn|=turns
    """
)
"""A task that one pupil over has nobody to do it with."""

LEFT_OVER = Saying(
    """
    one|anyone|anybody|somebody|someone|whoever|person|pupil|child|dancer|people|pair|two|any|who|
        those|left|spare|if|three|nobody ~3 =over !there|here|to|the|your|a|his|her|its|into|in
    =over $
    leftover|leftovers|leavings|remainder
    be|is|one|anyone|anybody|whoever|who|person|people|pupil|child|someone|somebody|pair|get|any|
        still|dancer =left !hand|foot|arm|leg|side|elbow|knee|shoulder|and|or|wall|of
    =left over|out|alone|standing|without|partnerless|unpaired|single
    unpaired|partnerless|unmatched|lone|solo
    =spare|=extra|=odd|single|remaining person|one|pupil|child|dancer|body|mover|player|learner|
        student
    last|final person|pupil|child|dancer|learner|student
    be|is|the =odd =out|=one
    odd one|pupil ?out
    one|two|pair|somebody too many
    i|me|teacher|adult ~2 be|are|is|am|=m|make|dance|work ~1 a|your|the pair|partner
    pupil|child|person|you and|with =i|=me|teacher|adult|helper
    spare|extra pair
    anyone|anybody|somebody|someone|whoever|who|one|any spare|single|extra|odd
    number|class|we|group|you|us|numbers ~3 =odd|uneven|=even|evenly|unequal
    =odd|uneven|unequal number !down|on|to|with|in|go|stand|face|one
    not|n't ~4 evenly|even|exactly|equally
    if ~5 evenly|even|uneven|odd
    without|no|lack|need|needs ~2 partner|anyone|anybody|pair
    without|lacking one|anyone $
    anyone|anybody|whoever|pupil|child|person|those|one|somebody|who ~2 without
    cannot|can't|not|n't ~3 find ~3 one|partner|anybody|anyone|somebody|someone|pair
    nobody ~1 there|opposite|beside|left|free
    nobody to dance|work|be|go
    nobody with
    anyone|anybody|someone|somebody|whoever|person|pupil|child|who ~2 last|remain|stuck|single|
        unmatched|looking|unlucky
    anyone|anybody|someone|somebody|whoever|those|pupil|child ~1 need|want ~1 =one|partner
    singles|remainder
    if|should|when ~3 end|finish on|with ~1 one
    partner|friend|other|they ~3 away|absent|missing|ill|poorly|off|gone|late
    join|help|visit|add|share|slip|squeeze|fit|tuck|attach ~4 pair|couple|twosome|duo !make|become|
        meet
    join|help|visit ~2 a|another|nearest|next =two
    another|any|nearest|nearby|different|neighbouring|other pair ~3 call|take|welcome|invite|let|
        make
    anyone|anybody|whoever|if|somebody|someone|one|spare|who ~~8 with|to|by|near|and =me|us|teacher|
        adult|helper|assistant|=ta|i
    which|what|whichever|any|whatever pair|two|couple ~3 join|help|visit
    alone ~1 if
    if ~2 alone|single|nobody
    #25..33 make|makes|divide|pupils|is
    share ~2 number|part|partner|role
    """,
)
"""Somebody is over, or has no partner."""

A_THREE = Saying(
    """
    make|become|form|be|in|as|with|is|are|one|allow|have|few ~2 three|=threes|threesome|trio !count|
        step|move|second|beat|time|breath|metre|shape|way|word|big|small|more|others
    group|team ~1 three
    a|the|=one three|trio|threesome $
    a|the|=one three|trio|threesome can|may|stay|take|answer|dance|work|share|swap|talk|=two|if|is
    three|=threes can|may|stay|together
    """
)
"""A three among pairs: where one over goes."""
