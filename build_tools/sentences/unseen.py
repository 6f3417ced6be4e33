"""What nobody can see and point to: enjoyment, effort, energy, quality."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "unseen": (
        "enjoy enjoying enjoyment effort fun feeling feelings pride proud nicely beautifully "
        "properly wonderfully brilliantly lovely confidence confident confidently happily "
        "creative creatively creativity imaginative musical musicality passion passionate "
        "commitment committed behaving behave sensible sensibly nice atmosphere mood spirit "
        "emotion emotions graceful gracefully elegance elegant quality talent talented flair "
        "impressive interesting concentrate concentration understanding understand "
        "imagination originality original joy joyful excitement excited enthusiasm "
        "enthusiastic engaged engagement motivated motivation determination determined "
        "resilience respect respectful cooperation cooperate teamwork presence charisma style "
        "sparkle gracefulness artistry artistic convincing convincingly believable thoughtful "
        "thoughtfully sincere sincerity willing willingness maturity mature attitude bravery "
        "courage ambition beauty wow pleasure wonder soul exciting thrilling stunning magical "
        "delightful gorgeous fabulous brilliant wonderful beautiful dramatic talented"
    ),
}

UNSEEN = Saying(
    """
    @unseen
    hard ~3 try|tries|trying|work|works|working
    happy !face|faces|mood
    do|doing|try|trying ~3 =best|=hard|=well
    dance|dances|dancing|it|moves|work|working|perform|performing|done|do|doing ~2 =well|=better
    good|great|lots|plenty|more|real ~1 energy|timing|expression|effort|behaviour|attitude|work|
        dancing|performance|feeling|focus|listening
    good ~1 shape|shapes ~~2 good
    most|more|real|much feeling|energy|effort
    perfect|perfectly|excellent|amazing|fantastic|super|outstanding
    sense of
    love|loves|loving|like|likes|liking ~1 dance|dancing|it|moving
    know|knows|knowing what|how ~1 they|to|it|he|she
    really|truly feel|being|become|becomes|believe|mean|means
    in ~1 character|role
    put|putting|give|giving ~2 heart|soul|everything|all|hearts ~1 in|into|and
    heart and soul
    give|giving ~1 =all|everything|hundred
    their|your|her|his =all $
    make|makes|making sense
    feel|feels|mean|means|sense ~4 inside|deep
    in|inside their|your|her|his|the ~1 head|heads|mind|minds|heart|hearts !up|down|high|low
    really|are|is|be ~2 focused|focussed|listening|thinking|trying|interested|involved|caring
    be|is|are =into it
    lost|absorbed in ~2 dance|it|movement|music|role
    """,
    _LISTS,
)
"""Something that nobody can see and point to."""
