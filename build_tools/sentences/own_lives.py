"""Pupils asked before the class about their own lives: families, money, bodies and troubles."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "kin": (
        "mum dad mother father parent family brother sister gran grandad grandparent uncle "
        "aunt mummy daddy carer nan nana granny grandma grandpa grandfather grandmother "
        "stepmum stepdad stepbrother stepsister auntie cousin relative guardian"
    ),
    "home": "home house bedroom flat",
    "grave": (
        "flood war nits lice accident hospital died dead hungry poor illness bullied divorce "
        "divorced refugee stammer burgled homeless prison free-meals funeral jobless lonely "
        "sick die abuse drunk drugs police arrested evicted foodbank food-bank debt"
    ),
    "hard": (
        "@grave fire lost lose leave left ill wet cried frightened scared afraid crash fight "
        "fought shout money pocket scar sad hurt grave job work moved"
    ),
    "hurt": (
        "shout hit hurt cry bully lose scold punish laugh argue tease smack blame yell die ignore"
    ),
    "feel": (
        "worry worried afraid scared frightened ashamed embarrassed sad lonely angry upset "
        "jealous guilty unhappy anxious nervous cry hate"
    ),
    "have": "car garden pet holiday trainers phone tablet console bedroom ipad pony pool",
    "private": "holiday dinners church mosque religion secret scar bedroom @kin",
    "when": "holiday weekend birthday christmas eid diwali hanukkah summer easter half-term",
    "ask": "tell talk share think say describe write remember speak",
    "size": (
        "tallest shortest smallest biggest lightest heaviest thinnest fattest oldest youngest "
        "slimmest"
    ),
}

OWN_LIFE = Saying(
    """
    whose ~1 @kin|@home !have|has|agree|agreed|consented|said|signed|gave|give|do|did|would
    whose ~~6 cost|cheap|cheapest|dearest|poorest|smallest|oldest|richest|expensive
    who ~2 lives|live ~3 small|smallest|big|biggest|flat|house|alone
    ^ who|has|which ~4 have|has|had|been|knows|lost|lived|seen|
        lives|feels ~~6 @hard|@kin
    ^ has|have|does|do|did|is|are|was ~1 anyone|anybody|any|someone|somebody ~2 here|
        ~5 have|got|had|know|lost|been|ever|lived ~~6 @kin|@grave
    ^ has|have|does|do|did|is|are|was ~1 anyone|anybody|any|you|someone|somebody ~1 here|class|ever|
        got|have|had|know|known|lost ~~6 @kin|@grave
    what|where|which|how|when|has|have|did|do|does|is|are
        ~4 you|your|anyone|anybody ~~6 @private !<story|poem|book|picture
    what|where|which|how|who ~4 your ~1 house|bed|garden|street
    what|which ~5 you ~2 for ~1 tea|breakfast|dinner|supper|lunch
    who|which ~3 have|has|had|got ~4 garden|dinners|phone|glasses|medicine
    ^ has|have|does|do|did|is|are|what|who|how ~1 anyone|anybody|you|ever ~5 at home
    what ~2 scare|scares|frighten|frightens|worries|upsets|hurts ~1 you
    somebody|someone|person|people|anyone ~1 you ~2 love|loved|miss|missed|lost|hate
    share|tell ~2 your|own|a secret|secrets
    what|how|say ~3 you ~1 weigh
    hand|hands up ~3 who|if|whose|anyone ~~6 @kin|@grave|@have|abroad|flat|english|language|church|
        mosque
    hand|hands up ~1 if ~2 you|your ~2 went|been|go|live|flew|own|got ~~4 @have|@when|abroad|away|
        house|home|flat
    ask|tell|share|say ~~3 who|whose|those|each|every|pupils|class|everyone !<story|poem|book
        ~~8 @grave|afraid|lost|scared|frightened|money|cried
    tell|share ~1 us ~2 about|when|of|if ~~6 @hard
    ask|tell|share|say ~~3 who|whose|those|each|us|pupils ~~8 @kin|@home
    @ask ~2 story|stories ~~8 @hard|@kin
    @ask ~3 about|of|how|what|who|where|when|why|whether ~4 your|own|their ~2 @kin|bedroom
    what|who|where|how|why|when ~6 your ~1 @kin|bedroom
    how many ~4 live|lives|sleep|sleeps|people ~3 your|with you
    which|who|how|anyone|anybody|everyone ~~8 bedroom ~3 own|your|share
    bedroom of your own
    live|lives|living ~3 in|at ~1 your house|home|flat|street
    how much ~~5 earn|earns|pay|pays|cost|costs|spend
    what ~2 they|it|@kin ~1 earn|earns|pay|pays|lost|died
    your|their|own @kin ~1 do|does|earn|earns|work|works|did|like|live|lives|fight|argue|said|say
    @kin ~1 do|does|did for a living
    when ~2 you|they|somebody ~1 was|were|felt|lost|had ~3 @hard
    a time when|you|somebody|someone|they ~6 @hard|@hurt
    think|remember|tell|share|talk|describe ~4 last|first|worst|a|one time|day
        ~3 you|somebody|someone|anyone|they|people|your ~1 @hurt|cried|bullied|died
    tell|show|share|say ~4 about|of ~3 @kin|@hard
    own ~1 saddest|worst|frightening|family|trouble|secret|fear|loss|worries|troubles
    your ~1 saddest|worst|most memory|fear|secret|day|moment|nightmare|embarrassing
    @ask|name|whisper|choose|thing ~~6 you ~2 =worried|=afraid|=scared|=frightened|=ashamed|
        =embarrassed|=sad|=lonely|=angry|=upset|=jealous|=guilty|=unhappy|=anxious|=worry
        ~1 about|of|by|at|when|$
    what|when|who ~2 make|makes|made you ~1 sad|angry|cry|lonely|scared|frightened|worried|ashamed|
        unhappy|upset
    what|where|how|who|which|tell|share ~6 you|your ~5 for|on|at|over|during|in ~2 @when
    what|where|how|which|tell ~~4 you|your ~1 get|got|gets|given ~2 for|from ~2 @when|@kin
    who|which|anyone|hands ~~5 went|been|go|gone|going|flew ~2 abroad|holiday
    where|which ~1 country|countries|do|does|are|were|did|was you|your ~2 live|born|family|parents
    which|what language|languages|religion|god|faith ~4 you|your|home
    who|which|whose|anyone ~~6 afford|rich|richest|poor|poorest|free-meals
    line|queue|arrange|stand|sort|order|put ~2 up|yourselves|row|line|order|out
        ~1 from|by|in ~2 @size|height|weight|age
    line|queue|stand|sort|order ~2 up|yourselves|order ~3 by|of ~1 height|weight|size|age
    how ~1 tall|heavy|old|fat|big are|is you
    how much ~1 do|does you weigh
    part|thing|bit ~1 of|about your|yourself ~1 body|face|self|looks ~~5 hate|dislike|ashamed|
        change|wish
    about|of yourself ~~4 hate|dislike|ashamed|wish|change
    """,
    _LISTS,
)
"""Pupils are asked before the class about their families, their money or their troubles."""

NOT_LIKED = Saying(
    """
    yourself|body|face|looks ~2 not|n't|never ~2 like|love|want
    you|they|yourself ~1 not|n't ~1 like ~2 about|of ~1 yourself|body|look|looks
    """
)
"""What pupils do not like of themselves."""
