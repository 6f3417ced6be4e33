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
        "siege invasion invade invaded evacuee evacuation refugee asylum troops army tank missile "
        "gun gunfire gunshot rifle shooting massacre genocide holocaust occupation armistice "
        "poppies poppy conflict ceasefire terror terrorist terrorism hostage prisoner prison "
        "slavery slave enslaved segregation apartheid kidnap kidnapped captive attack attacked "
        "exile exiled deported displaced detention rubble shrapnel landmine minefield curfew"
    ),
    "disaster": (
        "flood flooded flooding hurricane tornado cyclone typhoon earthquake tsunami avalanche "
        "wildfire bushfire landslide mudslide famine drought shipwreck wreck disaster catastrophe "
        "explosion inferno blaze eruption erupt blizzard thunderstorm tempest epidemic plague "
        "pandemic lockdown starve starving starvation sinkhole storm"
    ),
    "harm": (
        "accident crash ambulance hospital cancer illness disease injury injured wound wounded "
        "bleed bleeding blood stroke epilepsy dementia coma disabled paralysed hunger homeless "
        "homelessness divorce abuse abused bully bullied bullying poverty abandoned trapped "
        "stranded castaway lost-at-sea eviction evicted addiction cruelty cruel nightmare "
        "terrified screaming"
    ),
    "burning": (
        "forest house wood home building theatre hotel tower barn city village school street"
    ),
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
    burn|burns|burned|burnt|burning down
    lose|loses|lost|losing ?her|his|their|a|the|its|my|our ?own|best|little|old|
        only ?own @kin !property
    loss of ~3 @kin
    lost at sea
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
    toy|lego|model|pretend|cartoon|game|clockwork|paper|cardboard|puppet ~3 soldier|soldiers|tank|
        army|prison|battle|war|storm|crash|wreck|volcano
    tug of war
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
