"""Words for a kind of pupil, for work apart from the class, and for a part in the lesson."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_PUPILS = {
    "kid": (
        "pupil child dancer learner student boy girl youngster kid mover performer infant listener"
    ),
    "who": (
        "pupil child dancer learner student boy girl =those people person anyone somebody someone"
    ),
    "trait": (
        "=able abler weak+ slow+ poor+ bright+ clever+ struggling lazy+ shy clumsy+ naughty+ "
        "overweight fat obese unfit immature babyish disruptive difficult nervous anxious timid "
        "awkward unsteady dim+ dull backward inattentive uncoordinated unmusical unconfident "
        "hyperactive fidgety silly needy disabled autistic deaf blind dyslexic dyspraxic fearful "
        "forgetful hopeless vulnerable challenging restless reluctant inexperienced talented "
        "gifted "
        "athletic lower-ability capable confident strong+ good quick+ fast+ heavy"
    ),
    "worse": (
        "clumsy naughty overweight fat obese unfit immature babyish disruptive shy weak poor lazy "
        "nervous anxious timid uncoordinated unmusical unconfident hyperactive dim hopeless "
        "forgetful disabled autistic deaf blind dyslexic dyspraxic inattentive badly behind "
        "backward struggling scared afraid"
    ),
    "fails": "struggle lack tire fail forget misbehave fidget wobble panic refuse suffer dislike",
    "measure": "able capable confident skilled gifted talented coordinated fit mature advanced "
    "experienced agile musical mobile skilful",
    "ill": (
        "behaviour behavioural learning medical attention coordination motor balance memory weight "
        "language speech concentration attitude mobility health emotional sensory"
    ),
}

KIND_OF_PUPIL = Saying(
    """
    the less|more|least|most|very|highly|not @measure !way|move|step|shape|version|part|dance|one|
        wave
    less|more|least|most|very|highly|not @measure @kid|=ones|$
    those|pupils|children|anyone|who ~2 less|more|least|most @measure
    the =able|gifted|talented|weak|disabled|clumsy|shy|strugglers !@thing|floppy|soft|light|quiet
    @trait ~1 @kid
    @trait =ones ~~2 who|that|can|may|need
    weak|weaker|slow|slower|able|abler|poor|low|lower|special group|set|table
    low|lower|high|higher|poor|limited|lesser ?er ability|attain|attainment|achieve|attainer|
        achiever|
        mobility|confidence|stamina
    less|more|most|least able
    bottom|top group|set|table
    @who|he|she|they ~4 @worse !shape|wave|jump|move
    @who|they|he|she ~2 @fails
    @kid|=those ~3 cannot|can't|never
    @kid|=those|they|he|she|who ~2 not|don't|doesn't|won't|didn't ~2 listen|understand|try|cope|
        manage|concentrate|behave|follow|remember|know|bother|get
    @kid|=those|=some|who ~2 find ~3 hard|tricky|difficult|difficulty
    @kid|=those|=some|who|with|have ~2 @ill ~1 problem|difficulty|need|issue|delay|disorder
    poor|bad|short|weak|limited ~1 memory|coordination|balance|behaviour|concentration|english|
        rhythm
    no|little|lack sense of
    special ?educational need
    struggler|=sen|=eal|=adhd|=asd|=ehcp|dyspraxia|dyslexia|autism|=girls|=boys
    =send @kid|group|register|list
    for|with|our|have =send !the|a|one
    slow learner
    not|n't ~2 good|strong|confident at|in
    two left
    he|she get|is|be ~1 silly|naughty|upset|tired|bored|loud
    weaker|weakest|younger|abler =ones
    badly behaved|coordinated
    lack ~1 confidence|coordination|rhythm|skill|concentration
    """,
    {
        **_PUPILS,
        "thing": "sink wave version part shape turn motif move one step count jump shake smile way",
    },
)
"""A line that is about a kind of pupil, or about what is the matter with one."""

APART = Saying(
    """
    corridor|library|classroom|office|playground|cloakroom|staffroom|foyer|reception|nursery|
        infants|
        kitchen|elsewhere|next-door|outdoors|upstairs
    outside|leave|out ?of the hall|room|door|space|lesson|dance
    next door|room
    another|different|other|separate|side|small|quiet|spare|sensory|own ~1 room|activity|task|game|
        lesson|class|place|job|area|work|worksheet|programme|song|music|dance|sheet|exercise
    corner|alcove|bench|behind ~3 screen
    work|go|practise|practice|stay|sit|play in|to a|the|one corner|alcove
    word|crossword search|puzzle|$
    physiotherapist|mentor|nurse|caretaker
    sheet|worksheet|colouring|book|tablet|ipad|computer|laptop|game|puzzle|jigsaw|clay|lego|bricks|
        homework|maths|spelling|reading|model|painting|toy|headphone
    in|to|at|by ?the|a corner|side|edge|back|end|mat|far|wall|stage|table ~~5 with|of|away|on|alone|
        and
    their|his|her|own exercises|=stretches|physiotherapy|therapy|programme|=stretching
    physiotherapy|physio|therapist|therapy|exercises
    separate+|separately|=alone|individually|one-to-one|=apart
    one to one
    on|by their|your|his|her own !space|spot|body|arms|counts|beat|side
    with|by ?an|a|the|their ?teaching|learning|support|classroom adult|assistant|helper|=ta|aide|
        tutor|
        carer
    away from ~3 class|others|rest|group|hall|dance|everyone
    instead|place ?of ?the|this|a|that =dance|=dancing|lesson|=it|=this|moving|=class
    instead $
    while|as|during|until|when ~2 others|rest|class|everyone|group|dance ~2 dance|work|finish|move|
        do|
        has|have|perform|rehearse|practise|=work
    opt|sit|stay|miss|excuse|drop|leave|keep ~2 out
    throw|catch|bounce|kick ~2 catch|ball|hoop|beanbag
    """
)
"""Work apart from the class."""

TOGETHER = Saying(
    """
    with|alongside|among|amongst|beside|round|around|near ?all|in ?to|the ?of ?your|the|their|same|
        a|
        each|own group|four|partner|class|rest|others|everyone|everybody|pair|circle|row|team|three|
        friend|dancers|pupils|us !but|are|go
    next|close to|by ?your|the|their|a partner|friend|group|four|others
    in|to|into|for|of ?the ?middle|centre|same|of ?your|their|the|same same|own group|four|circle|
        dance|row|pair|line|three|wave
    middle|centre|heart of ?the|their|your|a group|four|circle|class|dance
    @keeps ~5 together|everybody|everyone|all
    everyone|everybody|all|three|four ~1 v:land|begin|start|follow|use|dance|
        go|finish|travel|break|move|take|answer|keep|freeze|end|copy|still|joins|join
    your|their|same|own =four|=group|partner|pair !dance|dances|finishes|works
    as one|part of|more
    all|everybody|everyone ~2 together
    join|rejoin|return ~3 with|together|in|into|beside
    dance|begin|start|finish|freeze|move|go ~3 together|beside
    """,
    {"keeps": "dance move begin start land finish go stop freeze sink rise turn"},
)
"""A part in the dance that everyone dances."""

_DANCE = {
    "sound": (
        "beat drum tambourine tambour shaker bell triangle cymbal rain thunder wind sound music "
        "rhythm pulse tune instrument maraca recorder chime gong bass storm tempo song voice clap "
        "track metronome xylophone cabasa claves piano keyboard speaker cd player"
    ),
    "sign": (
        "card letter number word count move swap signal cue start stop change sign order arrow "
        "picture light torch scarf flag name title hat baton timer clock"
    ),
    "dance": (
        "beat drum card word move movement count signal pathway four pair group row dance dancer "
        "motif phrase shape stillness ending start section part canon join freeze level map score "
        "story poem verse line rhythm timing lesson audience step gesture partner shaker photo "
        "question answer idea change star best clear clearest show showing performance opening end "
        "middle other others class everyone wall weather wave storm pattern landing jump turn"
    ),
    "look": (
        "watch look spot notice note observe count tick record see find listen search check write "
        "draw film photograph map sketch choose judge pick compare time"
    ),
}

PART = Saying(
    """
    play|keep|beat|tap|clap|shake|ring|drum|strike|hit|bang|provide|make|work|operate|run|control|
        manage|press|start|stop|fade|pause|give|add|mix ~4 @sound|time|silence
    play ~2 for|while|when|as
    sign ~1 to|the
    drum|hum|sing|chant
    call|hold|turn|show|point|lift|raise|signal|start|stop|cue|lead|flip|wave|change|put|press|
        switch|
        lay|display|shine|set|arrange|sort|shuffle|choose ~5 @sign
    v:give !out ~5 @sign
    conduct|direct|choreograph|coach|narrate|referee|umpire|announce|dj|mark|score
    call|point|show|name|announce|say ~3 wall|turn|way|direction|side
    be ~3 conductor|director|caller|narrator|judge|eye|reporter|critic|coach|timekeeper|drummer|
        musician|choreographer|photographer|referee|announcer|detective|leader|host|presenter|
        storyteller|scribe|mentor|assistant|voice|audience|wind|weather|designer|dj
    @look ~~14 tell|say|report|feed|share|describe|show|explain|suggest|advise|announce|name|praise|
        comment|talk|present|discuss|compare|give
    @look ~~14 help ~1 the|to|them|a|one|class|group|choose|decide
    tell|report|suggest|advise|praise|coach|feed|help|comment ~4 @dance|them|us|back|what|which
    say ~4 @dance|what|which|who|whose|how|when|where|whether
    read|tell|speak|recite|whisper|call ~5 aloud|poem|story|words|verse|out|text|lines|narration|
        script
    count ~3 aloud|us|them|in|beats|bars|eights|counts|dancers|class|for|moves|four
    write|draw|film|photograph|map|sketch|record|note|make|take|list|log|collect ~5 @dance|photos|
        notes
    tick|complete|fill ~6 @dance|list|sheet|grid|what
    choose|decide|pick|judge|vote|plan|design|invent|compose|create ~5 @dance|@sign|@sound
    learn|teach|mark|walk ~4 @dance|with
    watch|look|spot|notice|observe|listen ~1 for|out|which|how|one|a|when|where|whether ~4 @dance|
        @look|
        who|still|together|moment|time|thing|two|three|high|low
    note|notice|spot ~2 one|two|a|each|every|which|what|who|how|when|where
    watch|observe ~2 one|a|two pair|four|group|row|dancer
    dance|move|perform|mirror|mime ~3 seated|chair|hands|arms|fingers|sitting|with
    ask ~4 question
    explain|show|share ~3 it|them|what|how|why
    chalk|plot|trace|mark|colour ~5 @dance
    hold|carry|move ~4 cloth|ribbon|rope|river|curtain|prop|parachute|banner
    checklist
    eyes|ears|voice for|of
    watch|listen for
    in charge
    responsible|look after ~4 @sound|@sign
    """,
    _DANCE,
)
"""Something real that a pupil who does not dance does for the dance."""
