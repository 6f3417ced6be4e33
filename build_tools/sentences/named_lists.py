"""Lists of words that several sayings share, in dictionary words; a phrase calls one by `@name`."""

from __future__ import annotations

_LIMBS = "hand palm finger fingertip thumb fist arm elbow wrist shoulder knuckle"
_REST = (
    "body head neck chin face cheek nose ear eye brow forehead chest rib back spine bone tummy "
    "stomach waist hip bottom seat tail leg thigh knee shin calf ankle foot heel toe sole nail "
    "hair skin muscle side tiptoe lip mouth tongue eyebrow lap"
)
NAMED = {
    "limb": _LIMBS,
    "body": f"{_LIMBS} {_REST}",
    "back_body": "back shoulder head neck hip side waist foot knee ankle leg toe",
    "somebody": (
        "partner each-other neighbour friend classmate other another person dancer pupil child "
        "teammate twin buddy mate somebody someone anybody anyone everybody everyone group four "
        "three pair people opposite them him her one learner student peer leader follower"
    ),
    "class": (
        "pupil child class everyone everybody all dancer learner student group partner you they "
        "teacher adult"
    ),
    "count": "count beat second tap clap moment while time minute breath bar phrase",
    "slow": (
        "slow+ gentle+ soft+ careful carefully care control controlled controlling calm+ steady+ "
        "smooth+ light+ quiet+ tender+ lightly cautious cautiously gradual gradually unhurried"
    ),
    "fast": (
        "fast+ quick+ rapid+ swift+ speedy+ speed hurry breakneck brisk+ furious furiously madly "
        "whirlwind lightning"
    ),
    "go": (
        "go walk run travel move skip gallop jog march step stride stroll tiptoe creep crawl "
        "scuttle shuffle sidestep side-step slide glide skate float drift dance rush dash race "
        "hurry trot canter prowl pounce wander weave dart zoom whizz hop leap jump bound charge "
        "sprint chase flow stream swim fly swoop sail roam tread pace stomp scurry scamper bustle "
        "slither wriggle roll"
    ),
}
"""Each list by its name."""
