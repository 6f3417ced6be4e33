"""What in a stimulus can trouble a pupil: danger, war, loss, death, illness."""

from __future__ import annotations

from build_tools.sentences.sayings import Said, Saying

_LISTS = {
    "kin": (
        "mother father mum dad mummy daddy parent grandfather grandmother grandad gran granny nan "
        "grandpa grandma brother sister friend baby child son daughter family husband wife dog cat "
        "pet pony hamster rabbit uncle aunt twin people home house village everything crew sailor "
        "somebody someone man woman boy girl lives life war limb leg arm sight memory"
    ),
    "died": (
        "die died death dead dying deceased drown drowned killed kill murder murdered perish "
        "perished bereaved grieve grief mourn mourning mourner funeral grave graveyard burial "
        "coffin cemetery widow orphan orphaned ghost-town corpse memorial cremation suicide hanged"
    ),
    "war": (
        "war soldier trench bomb bombed bombing bombardment blitz air-raid battlefield battle "
        "siege invasion invade invaded evacuee evacuation evacuate evacuated "
        " refugee asylum troops army tank missile "
        "gun gunfire gunshot rifle shooting massacre genocide holocaust occupation armistice "
        "poppies poppy conflict ceasefire terror terrorist terrorism hostage prisoner prison "
        "slavery slave enslaved segregation apartheid kidnap kidnapped captive attack attacked "
        "exile exiled deported displaced detention rubble shrapnel landmine minefield curfew "
        "hijack riot protest revolution uprising rebel execution execute gallows guillotine "
        "hanging jail dungeon gaol camp workhouse sentry bayonet cannon spear dagger ambush "
        "smuggler migrant migration border fugitive concentration ration rationing warplane "
        "gladiator conqueror pirate"
    ),
    "disaster": (
        "flood flooded flooding hurricane tornado cyclone typhoon earthquake tsunami avalanche "
        "wildfire bushfire landslide mudslide famine drought shipwreck wreck disaster catastrophe "
        "explosion inferno blaze eruption erupt blizzard thunderstorm tempest epidemic plague "
        "pandemic lockdown starve starving starvation sinkhole storm thunder lightning whirlpool "
        "volcano lava tidal-wave capsize collapse derailed derailment oil-spill extinction "
        "extinct melting-glacier gale squall quicksand"
    ),
    "harm": (
        "accident crash ambulance hospital cancer illness disease injury injured wound wounded "
        "bleed bleeding blood stroke epilepsy dementia coma disabled paralysed hunger homeless "
        "homelessness divorce abuse abused bully bullied bullying poverty abandoned trapped "
        "stranded castaway lost-at-sea eviction evicted addiction cruelty cruel nightmare "
        "terrified screaming terror dread horror monster ghost ghoul phantom vampire skeleton "
        "zombie devil demon churchyard tomb haunted nightmare predator prey hunt hunter hunted "
        "slaughter butcher snare shot burglar burglary burgled robber robbery thief stolen "
        "mugging knife razor scar surgery operation wheelchair-bound ambulance hospice ward "
        "evict beggar begging foodbank famished malnutrition lonely loneliness outcast misfit "
        "rejected excluded teased mocked jeered taunted gang foster fostered adopted orphanage "
        "stepmother runaway drunk drunken drugs suffocate suffocated choke choking fear afraid "
        "frightened phobia panic anxiety depressed depression weeping sobbing"
    ),
    "burning": (
        "forest house wood home building theatre hotel tower barn city village school street"
    ),
    "theirs": "their his her its my our",
    "safe": "lantern lamp glass brewing kettle window door drain jacket boots petrel trooper",
}

TROUBLE = Saying(
    """
    @died !heat|end|ringer|wood|leaf|leaves|sea|calm|straight|heading|flower
    @war !paint|drums|dance|horse|ship|games
    @disaster !@safe|back|of|through|in|tide|lights|light
    @harm !of|hat
    ill|poorly|unwell|sick !will|humoured
    forest|house|wood|great|bush|brush|grass|hill|terrible|big ~1 fire|fires
    fire|fires ~3 @burning|trees|animals|homes|valley|hillside|spread|spreads|sweep|sweeps|
        rage|rages|destroy|destroys|gutted|victim|victims|survivor
    @burning ~2 on fire
    @burning ~3 burn|burns|burning|burnt|burned|ablaze
    burn|burns|burned|burnt|burning down !<candle|fuse|match|wick|taper|stick
    fire|fires in|at|on ~2 @burning|ship|factory|mill|school
    smoke ~4 fill|choke|pour ~3 @burning|valley|sky|room
    fight|fights|fighting|fought|quarrel|argue|arguing|shout|shouting ~3 @kin|each-other|upstairs|
        parents|playground|street|home
    @kin|parents ~2 fight|quarrel|argue|row|shout
    cut|cuts|cutting|chop|fell|felled down ~2 forest|rainforest|tree|trees|wood
    lock|locks|locked|shut|chained|tied|caged ~3 in|up|into|to ~3 cage|cellar|tower|cupboard|prison|
        room|dark|post|wall
    cage|caged|chains|shackles ~4 child|children|people|animal|animals|tiger|lion|bear|elephant
    leave|leaves|left|leaving ~2 behind|alone|at ~3 side|home|roadside|station|school|night|war|
        people|child|children|family
    left behind|alone
    @kin ~2 move|moves|moved|moving out|away
    pack|packs|packed ~3 bags|suitcase|suitcases ~4 out|leave|leaves|night|flee
    goes|went|go|gone missing|away
    push|pushed|kicked|thrown|driven|turned|chased|forced ~1 out ~2 of|from ~2 gang|group|home|
        house|village|land|town|country
    take|takes|taken|took|taking|sent|send|torn|stolen ~2 from|away ~2 @theirs @kin|home|homes|
        parents|land|children
    take|takes|taken|took|eat|eats|eating|devour|devours|swallow|swallows|catch|catches|kill|kills|
        steal|steals ~2 child|children|boy|girl|person|people|baby|babies|deer|lamb|mouse|rabbit
    eat|eats|devour|devours =it|=them|alive
    lose|loses|lost ~2 sight|track ~2 of ~2 @kin
    queue|queueing|queuing|wait|waiting ~2 for|at ~2 food|bread|soup|water|border|visa
    suitcase|suitcases|bundles ~4 fled|flee|border|camp|station|night|refugee
    sleep|sleeps|sleeping|slept|asleep|live|lives|living ~3 rough|doorway|doorways|streets|pavement|
        newspapers|tent|tents|cardboard
    cannot|can't|dare ~2 leave ~2 house|home|room
    sell|sold|selling ~3 people|child|children|slaves|family
    bridge|roof|mine|building|dam|tower|wall ~2 fell|falls|collapses|collapsed|bursts|burst|breaks
    rescue|rescues|rescued|winch|winches|winched|pulled ~3 people|survivors|crew|child|children|
        man|woman|boy|girl|sailors|water|sea|ruins|rubble
    fall|falls|fell|falling ~2 off|from ~2 cliff|roof|horse|ladder|bridge|tower|tree|sky
    train|car|plane|aeroplane|bus|coach|lorry|bike|boat|space ~2 crash|crashes|wreck|disaster
    run|runs|ran|running ~2 away|for ~2 from|home|life|lives
    chased|hunted|attacked|bitten|stung|followed by
    whip|whips|whipped|beat|beats|beaten|hit|hits ~3 child|children|boy|girl|horse|dog|slave|slaves
    mother|father|mum|dad|parent|brother|sister ~6 war|sea|prison|hospital|away|gone
    child|children|boy|girl|pupil ~4 nobody ~2 play|plays|talk|talks|like|likes|speak|speaks
    with|has|have|without ~1 no|any ~1 friend|friends|home|family|parents
    by =himself|=herself|=themselves ~~6 playtime|playground|wall|corner|bench|night|dark
    street|streets|house|houses|home|homes|field|fields|village|town|road|roads under|below water
    lifted|winched|airlifted|plucked ~1 off|from ~2 roof|roofs|ship|boat|cliff|sea|water
    elephant|animal|animals|dog|horse|donkey|bear|lion|child|children|boy|girl|man|woman|people|
        slave|slaves ~2 beaten|whipped|kicked|hit|starved|hurt
    lose|loses|lost|losing ?her|his|their|a|the|its|my|our ?own|best|little|old|
        only ?own @kin !property
    loss of ~3 @kin
    lost at sea
    river|sea|dam|canal|water|stream|lake ~3 burst|bursts|broke|breaks|rose|flooded|over
        ~3 bank|banks|wall|walls|doors|door|roof|roofs|streets|street|village|town
    iceberg
    not|n't|nobody ~2 come|came|return|returned ~1 back|home
    lost ~2 in|on ~2 woods|forest|mountain|moor|desert|snow|fog|crowd|city|sea
    lost ?and ?alone child|children|boy|girl
    sink|sinks|sinking|sank|sunk|capsize|capsized|capsizes ~3 ship|boat|ferry|liner|submarine|ocean
    ship|boat|ferry|liner ~3 sink|sinks|sinking|sank|sunk|capsizes|capsized|down
    rescue|lifeboat|helicopter ~6 sailor|crew|drowning|survivor|cliff|storm|roof
    survivor|survivors
    flee|fled|fleeing|flees|escape|escapes|escaping ~6 home|country|city|war|night|village|border|
        danger|land|fire|flood
    cross|crossing ~3 sea|border|channel ~4 small|night|boat|raft|dinghy
    empty ~1 chair|bed|cot|place ~~8 grandfather|grandmother|mother|father|week|after|gone|home
    never ~2 came|come|returned|returns|return ~2 home|back|up|again
    call|cry|crying|calling|scream|shout ~2 for help
    voices|people ~3 scream|screaming|crying
    miner|miners|pit|mine ~8 explosion|collapse|collapsed|trapped|underground|buried
    buried alive
    bury|buries|buried ~4 village|town|school|people|house|city|alive
    hit|struck|strike ~1 by ~2 car|train|lightning|bus|lorry
    gas|fire|air-raid siren|attack|chamber
    says goodbye|good-bye ~4 last|ever
    last ~1 goodbye|letter|breath
    in ~1 hospital|intensive|prison
    parents ~4 separate|separated|split|apart|divorce
    """,
    _LISTS,
)
"""Something that pupils may have lived through, or fear."""

_HARMLESS = Saying(
    """
    storm lantern|lamp|glass|kettle|window|drain
    lost property|teeth|tooth
    no|not|nobody ~3 hurt|harmed|injured|die|dies
    treasure|egg|bargain|word|number|house hunt
    shooting star|stars
    shoot|shoots|shooting ~2 up|out|through|soil|earth|ground|leaves
    fish|picnic|base|summer|holiday|scout camp
    toy|lego|model|pretend|cartoon|game|clockwork|paper|cardboard|puppet ~3 soldier|soldiers|tank|
        army|prison|battle|war|storm|crash|wreck|volcano
    tug of war
    card|cards|snap|chess|board|ball|quiz|game ~8 battle|war|fight|attack|capture|captures|win
    battle ~2 for ~2 biggest|best|most|first|last|ball|pile
    snowball|pillow|water|conker|staring|thumb fight|fights|battle|war
    blood|fire red|orange
    """
)
"""Words that sound like trouble and are none."""


def trouble(text: str) -> Said | None:
    """The first thing in a text that can trouble a pupil."""
    if _HARMLESS.mentioned(text):
        return None
    return TROUBLE.mentioned(text)
