"""Pupils try things out, and pupils decide: what a task leaves to them."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "ways": (
        "way ways idea ideas different new another own many possibility version shape shapes move "
        "moves something somewhere somehow turn any"
    ),
    "pupil": (
        "you they pupil pupils dancer dancers child children group pair four three partner each "
        "everyone everybody class"
    ),
    "open": "order level speed shape shapes direction way place pathway part move moves ending end "
    "turn time partner starting size number step steps option",
}

SEARCHES = Saying(
    """
    explore|discover|experiment|invent|improvise|investigate|search|brainstorm|imagine|dream
    try !hard|harder|and|your|to|not ~3 @ways
    try ?it|this|that|the|each|every|being|out|doing|moving ~4 with|as|low|high|fast|slow|big|small|
        in|from|out|being|again !hard
    try|tries|tried ~1 one|two|three|four|some|many|several|being|out
    test|sample|compare ~4 @ways|in|it
    look|seek|search ~1 for|out ~4 @ways|how|what
    find|finds|finding|look|seek ~4 way|ways|how|moves|shapes|ideas|own|different|new|as|many|#2..8
    play ~3 with|about|around
    how many|else|could|can|might|would|does|do|few|far|small|big|slow|slowly|quickly|high|low
    what else|if|could|happens|other|would|might|ways|can
    where|which|who ~2 could|can|might|would|else
    see ~3 how|what|which|whether|if|where
    notice ~3 what|which|how|whether|where
    in|as many|different ?as ?you ways
    as many ~4 can|as
    ?as|your|any|an|the way|ways|move|idea|turn ~3 of|you|they ~1 own|like|can|think|choose
    of ~1 own|=yours
    something ~3 else|new|own
    make ~1 up
    any ~3 you|like|can|wish|way
    choose|pick|decide|select
    no|not ~3 right|wrong|one|single ~1 answer|way
    differently|unexpected|surprise|surprising|unusual
    ^ could|might|can|what|how
    let ~4 start|lead|take|push|pull|move|carry|decide|guide ~3 you|move|moves|chain|where|them
    somewhere|something|anywhere else|new
    each|every ~1 time ~3 different|new|another
    alter|bend|change|vary|adapt|twist ~5 own|yours|new|different|something|suit
    """,
    _LISTS,
)
"""Pupils try things out, look for ways, see what happens."""

TELLS_EXACTLY = Saying(
    """
    exactly|precisely|perfect|perfectly|correct|correctly|accurately
    teacher|=i ~1 call|name|shout|tell|show ~3 move|moves|shape|shapes|step|steps|each|order
    learn|copy|repeat|practise|rehearse|memorise
    as ~3 printed|shown|shows|told|taught|written|does
    same
    dance|perform|do|follow|learn ~5 sequence|routine|card|board|order|instructions|steps
    step|hop|march|walk|jump|stamp|clap|turn|lift|lower|bend|straighten|stretch|crouch|reach|rise|
        sink|sweep|nod|tick|tock|swing|kneel|stand|press|crease|skip|run ~5 #
    arm|arms|foot|feet|knee|knees|heel|heels|hand|leg ~3 up|down|out|in|together|wide|on|bend|bent|
        straight|lift|right|left
    right|left ~1 arm|hand|foot|leg|side|knee|heel
    step|turn|hop|lean|slide|swing ~2 right|left|forwards|backwards|back|forward
    # ~2 times|counts|beats
    """
)
"""What to do is told move by move."""

DECIDES = Saying(
    """
    v:choose|decide|select|vote|pick !<teacher|i|me|we|it|been|has|have|must|already|adult|class|
        captain|card !up|your|on|it|off|by|the|out
    choose|decide|select|vote|agree|pick !<teacher|=i|=it|been|already|adult|which|that|pairs|
        groups|
        those !up ~3 which|what|who|how|when|where|whether|one|two|three|four|if|between|a|an|your|
        own|on|
        order|from
    agree|negotiate|settle !<been|already|have ~3 which|what|who|how|when|where|whether|on|order
    vote
    that|which|it suit ~2 you|your|them
    for you|them to ~1 say|choose|decide
    up|down to you|them|pupils|dancers|each|every|pairs|groups|everyone
    your|their|his|her own idea|move|moves|way|shape|shapes|order|ending|choice|dance|motif|turn|
        version|words|ideas|pathway|path|rhythm|start|gesture|actions|speed|level|answer|signal
    of ~1 own|=yours !space|accord
    own ~1 choice|choosing|idea|way|shape|move|moves|ending|order|version|design
    own ~1 ideas
    any|whichever|whatever|either|wherever|whenever|however ~4 @open|you|they|suit|like|feel|want
    which|what|where|when|how|who ~6 is|be ~2 up|your|free
    invent|create|compose|devise|design|improvise|choreograph
    make|think|dream ~1 up
    make|find|add|plan ~3 own|fifth|new|another|extra|two|three|four|some ~1 move|moves|shape|
        shapes|
        way|ways|ending|idea|order|turn|step
    find|make|work ~3 own
    find ~3 way|ways|place|how
    you|they|pupils|dancers|each ~1 set|make|choose|decide|plan|pick|arrange|order|select ~4 move|
        moves|order|shape|ending|how|which|what|where|level|speed|it|counts|who
    swap|change|replace|leave|drop|add|rearrange|reorder ~2 any|one|two|whichever|some ~2 move|
        moves|
        shape|part|suits|out
    leave out ~2 which|whichever|what|one
    see ~3 if|whether|which ~3 prefer|like|better|best|suit
    prefer|favourite
    as|if|where|how|when you|they ~1 like|wish|want|choose|please|prefer|decide
    free|freely ~2 to|choose|improvise|dance|choice
    options|option|choice|choices !<no|without
    arrange|order|put|sort ~6 any|own|which|how ~2 order|way|you|like
    solve|experiment|explore
    """,
    _LISTS,
)
"""Pupils decide something about the dance."""

HANDED_ON = Saying(
    """
    learn|learnt|learned !that|to|how|what|why|when|where|more|about|from
    =handed ~2 down|on
    v:pass ~2 down|on
    tradition|traditional|folk|country|ceilidh|barn|maypole|morris
    given|set|old dance
    """
)
"""A dance that is learned as it is handed on."""
