"""Pupils picked by captains, or told to go with those they like."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "friends": "friend friends mate mates pal pals bestie besties bff",
    "people": (
        "people person somebody someone anybody anyone those children pupils classmates child "
        "others whoever whomever"
    ),
    "groups": "group groups pair pairs partner partners team teams fours threes =twos fives crew",
    "like": "like want know trust prefer fancy choose love",
}

TEAMS_PICKED = Saying(
    """
    captain|leader|best|chief|boss ~3 pick|picks|choose|chooses|select|selects|call|calls ~2 team|
        teams|row|rows|group|groups|side|sides|partner|partners|members|dancers|friends|people|
        players
    captain|leader|chief|boss ~3 call|calls|say|says|read|reads|shout|shouts ~3 name|names
        ~6 want|like|choose|pick|wants|likes|picks
    leader|captain|captains|leaders ~8 @people|name|names ~2 they ~1 @like
    you|two|are|as =captains !of
    pick|choose|select team|teams|sides
    pick|choose|select ~1 your|own|the|their|two|some ~1 team|teams|sides
    make teams
    one at a time !from|to ~~6 chosen|picked|left|gone
    turn|turns to pick|choose|select ~2 person|player|people|team|dancer|somebody|someone|name|
        member|partner|pupil
    until ~2 all|everyone|everybody|nobody ~2 chosen|picked|left
    choose|pick|find|get|work|go|join|stand|sit|be|join ~2 best|own|favourite|good ?own @friends
    sit|be ~3 with|next|beside|by ~2 =friends|=mates|bestie|besties|pals
    choose|pick|find|get|go|join|stand|work|dance|pair|team|partner|group
        ~3 with|your|a|some|own|to|by|beside|near|next|up ~3 @friends
    @friends ~1 group|groups|only|first
    @groups ~2 of|with ~1 your|their|own ~1 choice|choosing
    @groups of ~1 @friends
    popular
    friendship group|groups|pair|pairs
    whoever|anyone|whom|who|person|someone|somebody ~1 you ~1 like|likes|want|know|prefer|
        get ~2 best|most|with|on|$
    whoever|whomever|anyone|anybody you|they ~1 like|want|prefer|fancy|please|choose !to
    @people ~1 that|who|whom|which|you|they ~2 like|know|trust|prefer|get ~1 best|well|most|with|on
        !about|how
    @people you|they ~2 like|want|'d to|in|with|on ~2 work|be|dance|go|join|team|group|tribe|crew|
        side|row
    @people you|they ~1 know|get|trust ~1 well|best|with|on|$
    pick|choose|find|get ~1 someone|somebody|anyone|anybody|person|partner ~1 you|they ~1 like|want|
        know|prefer|get
    make|form|choose|pick|find|sort|organise|arrange|decide|create ~2 own ~2 @groups
    who|whom|who's|which ~1 with who|whom
    names|name ~3 they|he|she|you ~1 want|like|choose
    invite|ask ~2 @people|one|friend|classmate ~2 to|into ~2 be|become|join|dance ~2 partner|group|
        team|you|them
    invite|ask ~2 friend|friends ~2 to|into
    best|strongest|fastest|tallest|most ~1 first|popular
    last ~2 chosen|picked
    boys|girls ~3 against|versus ~2 girls|boys
    boys|girls ~1 are|be|is|as ~1 =ones|=twos|first|second|as|bs|leaders|followers
    boys|girls ~1 dance|dances|go|goes|start|starts|begin|begins|show|watch ~1 first|before|then|on|
        the|while
    boys|girls ~1 on|in|by|stand|to|at ~~6 girls|boys
    who ~2 want|like|wants|likes to ~2 be|work|dance|go with
    who ~1 want|wants ~4 team|group|row|tribe|crew|side
    """,
    _LISTS,
)
"""Pupils choose those they like, or are chosen before the class."""

ANYBODY_GOES = Saying(
    """
    not|n't|never ~1 mind|care|matter|bothered ~2 who|whom
    """
)
"""The teacher leaves it open who goes with whom."""
