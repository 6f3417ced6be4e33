"""Moves that are passed on by the teacher's own dancing, and the other ways to pass them on."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "watch": (
        "watch copy follow imitate mirror shadow study observe match repeat echo mimic ape "
        "reproduce emulate track learn"
    ),
    "teacher": "teacher adult leader instructor coach assistant =ta headteacher dancer expert",
    "dances": ("demonstrate model dance perform exhibit execute lead teach"),
    "what": (
        "move movement step phrase dance routine sequence motif pattern jump leap turn roll fall "
        "shape action it them way how technique part section version whole wave travel combination "
        "series wiggle twist spin slide skip gallop"
    ),
    "by_hand": (
        "card picture drawing photo photograph film video clip diagram strip arrow sheet board "
        "screen poster chart map image slide footage animation written write symbol score word"
    ),
}

BY_TEACHER = Saying(
    """
    @watch ~2 your|the|a|class|our|my ~2 @teacher !card|picture|word|drum|voice|hand|finger|signal|
        call|instruction
    @watch ~1 =me !if|to|into|through|out|along|over|across|round
    eyes ~2 on ~1 my|me|mine|teacher ~6 do|copy|same|as
    @watch ~6 =i ?shall|will|do|can|then|have ~1 do|dance|move|show|make|perform|demonstrate|go
    see|watch|look ~2 how|what ?=i|teacher ~1 =i|teacher ~1 do|dance|move|perform|go
    do|dance|move|go|repeat|copy|try|follow|make ~2 as|what|like|whatever|everything|exactly ~1 =i|
        =me|=teacher ~1 do|dance|show|move|make|perform|go|$
    just|exactly|do|move|dance|go like =me
    =i|@teacher ~2 demonstrate|model|perform
    =i|@teacher ?will|shall|can|then|first|always|must|to ~1 v:show|dance|teach|lead|do
        ~4 @what|class|you|first|once|twice|=moves|through|how|them
    @teacher ~1 =dancing|=demonstrating|=modelling|=demonstration|=performance|=performing|=dance
    join|come|follow|fall|dance ~3 in|on|along|up behind|after|with =me|teacher
    after|behind|with =me !in|to
    keep up
    facing|face ~2 teacher|me ~6 @watch
    demonstration|=demo
    ^ v:demonstrate|model
    @teacher ~1 v:show|model
    try|repeat|do|dance ~3 after =them|=me|teacher
    @watch ~8 from|by ~4 =me|teacher|adult|watch
    behind|beside|opposite|near ~2 @teacher ~~6 @watch
    @teacher ~1 v:dance|perform|demonstrate|model|exhibit
    how =i ~1 @what|do|land|move
    mirror ~1 me|teacher
    @watch ~5 they|=i|teacher dance|do|perform|move
    as =i do
    copycat|copycats
    class|pupils|everyone|children|all ~1 @watch ~3 them|teacher|me
    """,
    _LISTS,
)
"""Pupils have to see the teacher dance."""

BY_HAND = Saying(
    """
    @by_hand
    one|a|another|some|volunteer|other|each ~1 pupil|pair|group|four|child|dancer|volunteer ~3 show|
        lead|dance|demonstrate|teach|model|have|know
    copy|watch|from|learn|follow|mirror|see ~4 partner|neighbour|pupil|volunteer|friend|each-other|
        pair|group|four
    say|name|call|tell|describe ~4 move|word|step|count|it|them|each|aloud
    listen|hear ~4 word|call|count
    instead|or ~6 pupil|words|word|card|partner
    """,
    _LISTS,
)
"""Another way to pass a move on: words, cards, pictures, a pupil who has it."""

MOVES_IN_WORDS = Saying(
    """
    v:rock|rush|sink|rise|reach|stretch|curl|bend|twist|roll|crouch|swing|
        sway|spin|stamp|clap|tap|punch|slash|press|push|pull|flick|float|
        glide|dab|wring|melt|drop|fall|jump|hop|leap|skip|gallop|creep|
        crawl|tiptoe|march|stride|slide|side-step|sidestep|pounce|shake|freeze|
        open|close|fold|unfold|circle|lift|lower|lean|lunge|kick|shrug|
        nod|wiggle|ripple|arch|tuck|settle|burst|grow|shrink|snap|scuttle
    v:step|walk|run|turn|point ~1 #|right|left|forward|forwards|back|backwards|sideways|
        round|high|low|twice|across|up|down
    arms|arm|hand|hands|elbow|knee|knees|foot|feet|head|heels|shoulders ~2 up|down|out|wide|high|
        low|forwards|round|in|together|apart|behind|across|bent
    """
)
"""A move told in words."""
