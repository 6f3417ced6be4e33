"""Audiences from outside, filming, and a word that asks first."""

from __future__ import annotations

from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "guest": (
        "family families parent carer mum dad mummy daddy grandparent grandmother grandfather gran "
        "grandad nan relative relation guardian neighbour governor visitor guest public villager "
        "pensioner resident townspeople townsfolk stranger friend mayor councillor community "
        "outsider elder audience aunt uncle cousin sibling brother sister"
    ),
    "guests": (
        "=families parents carers mums dads grandparents grandparent relatives relations guardians "
        "governors visitors guests villagers pensioners residents townspeople community public "
        "neighbours mayor elders inspectors parent carer governor visitor guest relative"
    ),
    "show": (
        "show perform dance present share invite stream broadcast tour give stage put demonstrate "
        "display entertain welcome open repeat run do send bring"
    ),
    "place": (
        "assembly fair fete festival carnival concert market theatre hospital church library "
        "village town square shopping mall museum cathedral gala fayre supermarket station park "
        "hospice parade competition show evening showcase open-day nursery"
    ),
    "away": "school schools home care-home house homes class",
    "media": "film video recording clip footage photo livestream",
    "online": (
        "website online newsletter internet web youtube facebook instagram tiktok twitter social "
        "media blog feed app page platform channel portal classroom-app seesaw dojo whatsapp"
    ),
    "picture": (
        "photo photograph picture selfie snapshot video clip film movie footage time-lapse "
        "timelapse recording reel portrait shot image"
    ),
    "camera": "camera tablet phone ipad gopro camcorder webcam mobile smartphone device",
    "dancer": (
        "pupil pair group four half class partner dancer dance each-other child everyone showing "
        "run performance leap leaps jump turn shape section motif ending move sequence whole final "
        "it them one piece rehearsal work yourself yourselves lesson"
    ),
}

AUDIENCE = Saying(
    """
    @show ~~10 @guests !<imagine
    @guests ~~4 take|find|fill|have ~2 seat|seats|places|chairs|rows
    @guests ~~8 watch|come|coming|invited|invite|see|attend|arrive|sit|stand|join|gather|welcome|
        here
    @guests ~~4 in ~3 hall|audience|front
    invite ~6 in|to|into
    open ~2 doors|hall ~~4 to|at
    ask ~2 @guests in|to
    for|to|before|with|at|in ~2 @guests
    @guests ~1 assembly|evening|day|afternoon|morning|show|showing|performance
    @show ~~6 at|in|for ~3 @place
    at ~3 @place ~~8 @show
    take ~4 to ~3 @place|shopping|care|centre
    @show ~~6 to|for ~3 village|town|street|neighbourhood|world
    @show ~~6 home|care|old ~1 home|homes|house
    @guests ~4 film|record|photograph|video|stream
    other|neighbouring|another|next ~1 school|schools|nursery ~~8 watch|come|see|join|in|perform
    @show ~~6 for|to|with ~2 other|neighbouring|another ~1 school|schools
    bring|invite ~2 one|a|your|two ~1 guest|friend|relative|parent|adult ~2 from|home|in|along
    stream|broadcast|livestream|live-stream|televise ~4 live|dance|show|performance|showing|it
    livestream|livestreamed|live-stream
    stream|broadcast live
    @media ~~6 on|to|for|with|in ~3 @online|@guests|home
    share|send|show|put|post|upload|publish|email ~3 @media ~~6 @guests|@online|home|everyone
    school ~1 fair|fete|concert|gala|fayre|show
    christmas|summer|spring|easter|harvest|winter|leavers ~1 fair|concert|show|evening|festival|
        fete|performance|production
    sell ~2 tickets
    tickets
    """,
    _LISTS,
)
"""People from outside the school's lessons watch."""

NOT_OUTSIDE = Saying(
    """
    imagine|imaginary|pretend|not|n't|nobody|no ~~6 @guests|crowd
    family|families of ~3 bear|move|duck|shape|animal|mouse|fox|lion|word|note|rhythm|penguin
    into =families
    to|with|at|from|between your|each|both|either neighbour !from|of
    neighbour ~~4 ring|circle|row|chain|left|right|apart
    @place|village|town|market|street|square ~~4 long|years|centuries ago
    @place|village|town|market|street|square ~~4 once|then danced|sang|met
    did|danced|sang|sung|played|met ~4 in|at ~2 @place|village|town|market
    station ~~4 train|bus|platform|rails
    train|bus|platform|rails ~~6 station
    mother|father|mum|dad|parent ~1 duck|bear|bird|hen|hippo|elephant|lion|owl|penguin|swan|goose
    visitor ~2 from ~1 mars|space|another|planet|outer
    tell ~4 at ~1 home
    not ~1 there
    """,
    _LISTS,
)
"""Words of guests where nobody comes."""

LICENCE_ASKED = Saying(
    """
    ask|check|find|confirm|know|once|before|if|until|unless|whether|make|need|sure|look|only|cover|
        covers|allow|allows|have|has|get|buy ~~10 licence|license|licensed|licensing|permission|
        copyright
    licence|license|licensed|licences|copyright|permission|rights ~~10 ask|check|allow|allows|cover|
        covers|covered|first|before|school|office|head|needed|holds|hold|have
    performing ~1 right|rights
    ask|check ~~4 school ~~8 music|film|filming|visitors|audience|families|recording
    """
)
"""Licences are asked about."""

_OF_AUDIENCE = Saying(
    """
    music|audience|visitor|film|filming|perform|performance|performing|play|record|recording|
        families|parents|guests|show|song|track|watch|head|office|school|carers|public
    """
)

FILMING = Saying(
    """
    record|film|video ~4 @dancer|others|them|us|group|dance|showing ~3 with|by|on ~2 @camera
    stream|broadcast|relay ~4 live
    v:film|video|videotape|photograph|tape|record !<a|the|on|your|written|own ~5 @dancer
    =filming|videoing|photographing|filmed|videoed|photographed ~~6 @dancer|@camera|back
    @dancer ~3 filmed|videoed|photographed|recorded
    v:film|video|photograph|tape !<a|the|like|of|short|this|that !nothing|of|is|ends|stops
    make|take|shoot|record|capture|snap|grab|get|create ~4 @picture !of ~2 =cards|card|board|words
    take|shoot|capture|snap ~4 @picture
    take|make|share|post|send|get|grab ~1 a|quick|some|few|your|class|each =snap|=snaps !of|on|in
    make|shoot|record|create ~4 time-lapse|timelapse|film|video|movie|recording|reel|clip
    time lapse
    record ~5 on ~2 @camera|film
    @camera ~3 record|records|film|films|operator|person|running|ready|rolls
    set ?up ~2 @camera|tripod !down|aside|away
    teacher|adult|pupil|partner|helper|one ~2 films|videos|records|photographs ~4 @dancer
    tripod|selfie|selfies|freeze-frame-photo
    post|upload|stream|share|publish|tweet|send|email|airdrop ~6 @picture|@media
    put|show ~4 @picture|@media of|with ~3 @dancer|themselves|pupils|children|faces
    put|show ~6 @picture|@media ~~6 @guests|@online|display|corridor|home
    show|put ~2 your|their|our|his|her ~2 @picture|@media
    @picture|@media ~~6 on|to|for|in|with|onto ~3 @online|display|corridor|wall|families|parents|
        screen|next|class|board
    post|upload|publish|tweet|share|stream ~~6 on|to|onto|for|in ~3 @online
    upload|livestream|live-stream
    stream ~4 to|on ~3 screen|hall|live|big
    take|takes|taking ~2 photo|photos|photograph|photographs|pictures|selfies|snaps
    assistant|ta|adult|helper|somebody|someone|colleague videos|films|photographs|records ~4 @dancer
    snap your|their|the|a|each ~1 @dancer ~2 at|in|on|mid
    live streamed|stream|streaming
    livestreamed|live-streamed|streamed|broadcast|televised
    """,
    _LISTS,
)
"""Pupils are filmed, or pictures of them go out."""

_NOT_OF_PUPILS = Saying(
    """
    no|without|not ~3 pupil|pupils|child|children|faces|face|people|dancer|dancers
    picture|pictures|photo|photos|photograph|photographs|film|video ~2 of ~2 card|cards|board|hall|
        floor|words|strips|sheet|plan|drawing|drawings|map
    like|as ~3 film|photograph|photo|video|camera|movie
    hands|hand|eyes|fingers|head|mind ~4 camera|cameras
    watch|look|see|show ~5 film|video|clip ~2 of
    run|go|walk|move ~3 post
    tape ~~9 wall|floor|door|board
    record of|is
    stop motion|frame
    of|photograph|film|picture ~2 shadow|shadows|tree|trees|prop|props|puppet|puppets|clay|toy|toys|
        leaf|leaves|cloud|clouds|building|buildings|rain|river|sea|animals|birds !dancing|pupils
    in ~2 mind|head|memory|heads|minds
    """
)
_BY_THE_POLICY = Saying(
    """
    policy|policies ~~10 allow|allows|permit|permits|let|lets|say|says|on|for|photograph|
        photographs|
        first
    only|if|unless|where|once|check|follow|within|under|ask|after ~~8 policy|consent|permission|
        agreed|allows|permits
    ask|check ~~4 school|office|head ~~10 film|filming|photograph|photographs|photos|cameras|
        pictures
    signed|written ~1 permission|consent|agreement ~1 form|slip|forms|slips|from|$
    consent|permission ~~8 given|held|have|has|signed|from|parents|every|everyone|school|first
    parents|families|carers ~~5 agreed|agree|consent|consented|signed|permission
    """
)
"""Only as the school's policy and the families allow."""


def audience(text: str) -> Said | None:
    """People from outside who watch, and who are really to come."""
    said = AUDIENCE.said(text)
    return None if said is None or NOT_OUTSIDE.mentioned(text) else said


def asks_about_licences(text: str) -> bool:
    """Whether a text has licences for an audience or a recording asked about."""
    return LICENCE_ASKED.mentioned(text) is not None and _OF_AUDIENCE.mentioned(text) is not None


def filming(text: str) -> Said | None:
    """Filming of pupils, or sharing of their pictures, with no word on consent beside it.

    Beside it is the same sentence, the one before or the one after.
    """
    sentences = read(text).sentences
    for at, sentence in enumerate(sentences):
        said = FILMING.said(sentence)
        if said is None or _NOT_OF_PUPILS.mentioned(sentence):
            continue
        if not any(map(_BY_THE_POLICY.mentioned, sentences[max(0, at - 1) : at + 2])):
            return said
    return None
