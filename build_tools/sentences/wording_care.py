"""The words by which rules of care know touch, sudden sounds, dress and who decides.

The lists are short on purpose. Where wording is open to doubt, nothing is found.
"""

from __future__ import annotations

from build_tools.sentences.word_lists import word_list
from build_tools.sentences.wordings import wording

_SOMEBODY = (
    r"(?:(?:your|a|their)[ ](?:partner|friend|neighbour)|each[ ]other|one[ ]another"
    r"|(?:the|another)[ ](?:other[ ])?(?:partner|person|dancer|pupil))(?!'s)"
)
CONTACT = wording(
    "hand/arm/elbow/palm/five/piggy/partner/each other/one another/friend/neighbour/person/dancer"
    "/pupil/weight/balanc",
    rf"""
      (?:hold|join|tak|shak|clasp|link)(?:e|s|es|ing)?[ ](?:both[ ]|all[ ])?hands
      (?![ ](?:up|out|loose|high|low|still|wide|above|over|in[ ]front|together|away)
      |[ ]and[ ](?:feet|arms|legs))
    | link(?:s|ing)?[ ](?:arms|elbows|fingers)
    | (?:hold|tak|clasp)(?:e|s|es|ing)?[ ](?:your|a|their)[ ](?:partner|friend|neighbour)'s[ ]
      (?:hands?|arms?|wrists?|elbows?|shoulders?)
    | hand[ ]in[ ]hand | arm[ ]in[ ]arm | palm[ ]to[ ]palm | high[ -]fives? | piggy-?back\w*
    | hold(?:s|ing)?[ ](?:on[ ]to[ ])?{_SOMEBODY}
    | lean(?:s|ing)?[ ](?:on|against)[ ]{_SOMEBODY}
    | (?:lift|carry|carri|catch|pull|push|drag|hug|touch)(?:s|es|ing)?[ ](?:up[ ])?{_SOMEBODY}
    | touch(?:es|ing)?[ ](?:palms|(?:hands|fingers|fingertips|backs|elbows|shoulders)[ ]with)
    | hands?[ ]on[ ](?:your|a|their|each)[ ](?:partner|other|friend)'s
    | hands[ ]on[ ](?:the[ ])?shoulders[ ](?:of|in[ ]front)
    | (?:shar|tak|support)(?:e|es|ing|s)?[ ](?:your[ ]|their[ ]|a[ ])?(?:partner's[ ])?weight
      (?:[ ](?:with|of)[ ]{_SOMEBODY})
    | (?:shar|support)(?:e|es|ing|s)?[ ](?:your|a|their)[ ]partner's[ ]weight
    | counter-?balanc\w+[ ](?:\w+[ ])?{_SOMEBODY}
    """,
)
NO_CONTACT = wording(
    "touch/contact/width/length/between/gap/instead/in place/without",
    r"""
      without[ ](?:any[ ])?(?:touch\w*|contact|holding|hands) | no[ -](?:touch\w*|contact)
    | not[ ]touch\w* | (?:nobody|no[ ]one|never|don't|need[ ]not|needn't|has[ ]to|have[ ]to)[ ]
      (?:\w+[ ]){0,2}?touch\w*
    | hand'?s[ ]width | arm'?s[ ]length | contact[ ]is[ ]a[ ]choice
    | (?:scarf|ribbon|rope)[ ]between | (?:leave|keep)[ ](?:\w+[ ]){0,3}?gap
    | (?:instead|in[ ]place)[ ]of[ ](?:touch\w*|hold\w*|lean\w*|lift\w*|hands)
    """,
)
A_CHOICE = wording(
    "or /if /may /can ",
    r"""
      or[ ](?:stand|dance|move|keep|be|stay|mirror|copy|shadow|reach|hover|just|not|side|near
      |only)\w*
    | if[ ](?:you|they|both|pupils|partners|everyone)[ ](?:both[ ])?
      (?:like|want|agree|wish|choose|say)\w*
    | (?:anyone|everyone|you|they|pupils|partners)[ ](?:may|can)[ ]
      (?:choose|stand|leave|keep|say)
    """,
)

SUDDEN = wording(
    "lights/lamps/blackout/strobe/dark/bang/crash/clash/cymbal/explosion/scream/balloon/noise",
    r"""
      (?:lights|lamps)[ ](?:go[ ]|are[ ]|turned[ ]|switched[ ])?(?:out|off|down)
    | (?:turn|switch)(?:ing)?[ ](?:off|out|down)[ ](?:the[ ]|all[ ])*lights
    | (?:turn|switch)(?:ing)?[ ](?:the[ ]|all[ ])*lights[ ](?:off|out|down)
    | blackout | strobe\w* | flashing[ ]lights | in[ ](?:the[ ]dark|darkness)
    | dark(?:en|ened)?[ ](?:the[ ])?(?:hall|room)
    | (?:loud|sudden|huge|big)[ ](?:\w+[ ])?
      (?:bangs?|crash(?:es)?|noises?|cymbals?|explosions?|screams?)
    | (?:burst|bursts|pop|pops)[ ](?:a[ ]|the[ ]|some[ ])?balloons?
    | (?:bang|crash|clash)[ ](?:the|a|two|your)[ ](?:\w+[ ])?(?:drum|cymbals?|pans?|lids?|gong)
    """,
)
SUDDEN_WORDS = word_list(
    "lights lamps blackout blackouts strobe strobes strobing dark darken darkness bang bangs crash "
    "crashes clash cymbal cymbals explosion explosions scream screams balloon balloons noise noises"
)
"""A text with none of these words has no sudden sound and no dark."""
WARNED = wording(
    "warn/tell/say/show/explain/may /can /could/ears/startl",
    r"""
      (?:warn|tell|say|show|explain)\w*\b [^.!?\n]{0,80}\b
      (?:loud|bang|crash|noise|sound|dark\w*|lights?|coming|first|sudden|cymbals?)
    | (?:may|can|could)[ ](?:\w+[ ])?(?:upset|trouble|startle|frighten|cover|worry)
    | ears | startle\w* | anyone[ ]may
    """,
)

COSTUME = wording(
    "leotard/swimsuit/swimwear/crop top/tight-fitting/costume/fancy dress/bare arm/bare leg"
    "/bare chest/bare shoulder/tops off/vest/dress as/dressed as/dresses as/up as/headscar"
    "/head covering/turban/hijab",
    r"""
      leotards? | swim(?:suits?|wear) | crop[ ]tops? | tight-fitting | costumes? | fancy[ ]dress
    | bare[ ](?:arms|legs|chests?|shoulders) | tops[ ]off | vests?[ ]and[ ](?:pants|shorts)
    | dress(?:es|ed)?[ ](?:up[ ])?as
    | (?:remove|take[ ]off)[ ](?:\w+[ ])?(?:headscar(?:f|ves)|head[ ]coverings?|turbans?|hijabs?)
    """,
)
COSTUME_WORDS = word_list(
    "leotard leotards swimsuit swimsuits swimwear crop tight costume costumes fancy bare tops vest "
    "vests dress dressed dresses headscarf headscarves coverings covering turban turbans hijab "
    "hijabs"
)
"""A text with none of these words asks for no costume."""
DRESS_CHOICE = wording(
    "may/choo/choice/optional/anything/covered/sleeve/leggings/trousers/tracksuit/head/if "
    "/without/no /need/own clothes",
    r"""
      may | choose | choice | optional | anything | covered | long[ -]sleeve[sd]? | leggings
    | trousers | tracksuits? | head[ ](?:coverings?|scar(?:f|ves))
    | if[ ](?:they|you)[ ](?:like|want|wish) | (?:without|no)[ ](?:\w+[ ])?costumes?
    | own[ ]clothes | not[ ]needed
    """,
)

DRESS = wording(
    "wear/worn/dress/cloth/costume/kit/leotard/sleeve/leggings/trousers/tracksuit/cover/headscar",
    r"""
      wear\w* | worn | dress\w* | cloth(?:es|ing) | costumes? | kit | leotards? | sleeves?
    | leggings | trousers | tracksuits? | covered | cover[ ](?:arms|legs|heads?)
    | headscar(?:f|ves) | head[ ]coverings?
    """,
)
"""What a line is about that says dress is a choice, where it stands outside `wear`."""

DEFERENCE = wording(
    "risk/employer/authority/school/trust/council",
    r"""
      risk[ ]assessments? | employer\w* | local[ ]authority
    | (?:school|trust|council)(?:'s|s')?[ ](?:\w+[ ]){0,2}?
      (?:polic(?:y|ies)|rules|procedures?|safety|guidance)
    """,
)
