"""Pupils pressed, shamed or led by the hand into dancing."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "deed": (
        "dance join take crouch kneel lie run jump spin perform show crawl hop sink turn copy "
        "lead hold roll touch"
    ),
    "one": "they them he him she her you it pupil child anyone anybody whoever someone somebody",
    "others": "row group class others everyone everybody rest four pair team half friend table",
    "treat": (
        "playtime break breaktime lunch lunchtime golden minute point house-point turn reward "
        "treat trip party film club assembly pe place go"
    ),
    "prize": "sticker point house-point treat sweet prize reward certificate chocolate merit star",
    "haul": (
        "steer march drag frogmarch usher haul tow propel shove manhandle guide escort nudge "
        "lift shepherd prod yank"
    ),
}

MADE_TO = Saying(
    """
    everyone|everybody|all|they|pupil|child|class|nobody ~1 have|has|need|needs to @deed
        !nothing|less
    everyone|everybody|all|they|pupil ~1 must @deed
    you ~1 must|have ~1 =dance|=join|=perform
    tell|remind|warn ~2 them|him|her ~~3 everyone|everybody|row|group|others|rest|class|all|they
        ~~5 wait|waiting|lose|loses|down|stop|stopped|without|cannot|need|needs|watching|because|
            must|has|have|dance|dances|start
    lose|loses|miss|misses|lost|forfeit|forgo ~4 playtime|break|breaktime|lunch|lunchtime|golden|
        minutes|house-point|house-points|reward|treat|trip|party
    stay|stays|keep|keeps ~2 in at|for|during|over ~1 @treat
    insist|shame|scold|punish|threaten|bribe|nag|pester|badger|hassle|pressurise|humiliate
    press|pressure|bully|guilt ~1 them|him|her ~1 into|to|until|till
    let|lets|letting ~3 side|row|group|four|everyone|others|team|class|us down
    send ~3 headteacher|office|corridor
    their|his|her name|names ~3 on|up ~2 board|cloud
    warning ~~8 board|playtime|minute|minutes|office|out|lose|loses|headteacher|home|consequence
    final|verbal|last|formal|behaviour warning|warnings !drum|beat|sound|signal|call
    detention|sanction|punishment|time-out|timeout
    phone|ring|email ~2 =his|=her|=their|the parent|parents|mum|dad|family|home|carer
    make|have|let|get ~1 them|him|her ~4 alone|again|by-themselves ~2 in front of
    in front of ~2 class|everyone|others|all|friends|rest ~3 alone|by-themselves
    offer|promise|give|earn|win|get ~4 @prize ~~6 if|for|when ~3 dance|dances|join|joins|try|tries|
        dancing|joining
    =dance|=join|=perform ~3 or ~2 lose|miss|explain
    even ~3 reception|nursery|infant|infants|baby|babies|youngest|year
        ~4 can|manage|manages|do|does|did|could
    wimp|coward|spoilsport
    """,
    _LISTS,
)
"""Somebody is pressed or shamed into dancing, wherever it is said."""

WILL_NOT_MADE_TO = Saying(
    MADE_TO.phrases
    + """
    everyone|everybody|all|they|pupil|child|class|nobody ~1 have|has|need|needs to do|move|be|get|go
    everyone|everybody|all|they|pupil ~1 must do|move|be|get|go
    take|hold|pull|lead|bring|push|walk|carry ~3 them|him|her|hand|hands|arm|arms ~3 in|into|on|over
        !a|two
    take|hold|grab ~2 their|his|her hand|hands|arm|arms|wrist
    take|hold|grab|lead|pull|bring ~2 them|him|her ~2 by the hand|arm|wrist|elbow|shoulder|sleeve
    @haul ~1 them|him|her|child|pupil ~2 in|into|through|on|onto|over|round|back|to|along|forward
    make them|him|her ~1 @deed|do|move|get|be|try
    lose|loses|miss|misses|lost|forfeit|forgo ~4 @treat
    until they|he|she|you|everyone|everybody ~1 dance|join|dances|joins|agree|try|tries|do|does|
        give|gives
    @others ~1 to ~1 wait ~~8 them|him|her|they|he|she|one|pupil|child
    @others ~1 wait|waits|stops|repeats ~1 until|till|because|for ~1 @one
    the whole ~1 row|group|class|four ~3 wait|waiting|loses|stops|suffers|watching
    start|begin|go|do ~3 again|over ~2 because|for ~1 of them|him|her|you|one
    take|takes|taking away ~2 @treat
    take|takes|taking ~2 @treat away
    until they|he|she|you ~1 move|moves|start|starts|go|goes|stand|stands|get|gets
    show|dance|it ~3 ruined|spoilt|spoiled|wrecked
    stand|stands over them|him|her
    go ~4 office|corridor|headteacher
    speak|talk|report|complain ~3 parents|parent|mum|dad|family|carer|headteacher
    write|copy ~1 lines
    timer|stopwatch|clock ~~6 then|or|minute|minutes
    force|beg|plead|cajole|embarrass|tease|mock|blackmail
    press|push|pressure|dare|bully|guilt ~1 them|him|her
    put|under ~2 n:pressure ~1 on|them|him|her|$
    keep|carry|go|keeps on at them|him|her
    they|he|she|him|her|them ~2 give|gives|cave ~1 in !to|the|a
    wear|talk ~1 them|him|her ~1 down|into|round
    count ~2 down|to ~2 #3..
    in front of ~2 class|everyone|others|all|friends|rest
    @others ~2 to ~1 chant|cheer|shout|call|clap|stare|laugh|point|tell ~2 name|at|them|him|her
    chant|cheer|shout|clap ~3 until|till @one ~1 come|comes|join|joins|get|gets|dance|dances|do|
        does|give|gives
    do|does|dance|dances|practise|practises|finish|perform|performs|come|stay
        ~8 at|during|in|over ~1 lunch|lunchtime|playtime|break|breaktime
    send ~2 out|home|head
    consequence|consequences
    or else
    =dance|=join|=perform|=take ~3 or ~2 sit|leave|go|stay|tell
    even ~3 little|younger ~4 can|manage|manages|do|does|did|could
    name|names ~3 on|up ~2 list|chart
    keep ~1 them|him|her ~1 in|behind
    spoil|ruin|wreck ~2 it|dance|show
    what ~2 others|they|everyone|friends ~1 think
    everyone|everybody else ~1 can|managed|has|did|joined
    baby|babies|babyish|silly|chicken
    lesson|subject ~1 like|as =maths|=english|=any|=science|=spelling
    """,
    _LISTS,
)
"""The same of one who will not join, with words that elsewhere tell of the dance."""

NO_WAY_OUT = Saying(
    """
    no ~1 choice|excuse|excuses|exception|exceptions|opting|nonsense|arguing|argument|ifs|buts
    no|not|n't ~2 join|joining|dance|dancing|part ~~2 no ~1 @treat
    not|never|n't|nobody ~2 let|allow|allowed|allowing ~1 them|him|her|to|anyone|anybody|child
        ~3 sit|opt|stay|watch|out|refuse
    nobody|none|no ~4 opt|opts|sits ~1 out
    nobody|no|not|n't ~3 start|starts|go|goes|leave|leaves|move|moves|stop|stops|sit|sits
        ~2 until|till|unless ~1 @one|everyone|everybody|all ~2 join|joins|dance|dances|does|do|try|
        tries|joined|in
    not|n't|cannot|never ~1 take|accept ~2 no|refusal
    stop|not|n't ~1 being|be ~1 shy|difficult|naughty|awkward|rude|lazy|boring
    """,
    _LISTS,
)
"""What is ruled out for one who will not join, so that dancing alone is left: nobody opts out."""
