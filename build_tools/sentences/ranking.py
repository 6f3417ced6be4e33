"""Dancers ranked, marked or made to lose."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "dancers": (
        "dancer pair group row half four three pupil child partner team person soloist "
        "performer trio duet mover jumper turner leaper actor"
    ),
    "applauded": (
        "dancer pair group row half pupil child partner team person soloist performer trio duet "
        "mover jumper turner leaper actor"
    ),
    "good": (
        "=best =better =worst =worse =weakest =winner =won =wins =winners =nicest =favourite "
        "=finest =neatest =poorest =cleverest"
    ),
    "mark": "mark score point grade star rating",
    "prize": "medal prize trophy award gold rosette certificate cup",
}

RANKED = Saying(
    """
    =best|=worst|=weakest|=finest|=worse|=favourite|=favourites ~2 @dancers !work|ready|time|step|
        count|beat|day|moment|week|second|minute|hour|thing|part|
        word|move|place|corner
    who ~4 @good
    which|whose ~2 @dancers ~4 @good
    @dancers ~~3 which|who ~~5 @good
    whose ~4 =best|=worst|=weakest|=nicest|=finest|=neatest|=better|=worse|=poorest|=prettiest|
        =favourite
    who|which ~2 @dancers ~3 most|more|least ~2 feeling|energy|effort|talent|graceful|beautiful|
        beautifully|impressive|skilful
    who ~4 most|least ~1 talented|graceful|impressive|skilful|beautiful|beautifully|improved
    =marks|=points|=scores|=grades|=stars ~3 out|for|each|from ~3 of|ten|five|@dancers|dance
    mark|score|grade|rate|star|stars ~3 out of
    give|mark|rate|score|get|worth|deserve|star|stars|point|points ~~6 # out of ten|five|#5|#10
    #8..10 out of ten|#10
    give|award ~3 mark|marks|points|score|grade|grades|medal|medals|gold|prize
    how many|much ~1 @mark ~~8 get|give|deserve|earn|award|worth|out
    which|who ~4 medal|prize|trophy|cup
    win|deserve|earn|get|won|award ~2 @prize
    winner|winners|loser|losers|champion|champions|runner-up|runners-up|leaderboard|scoreboard|podium
    vote ~2 for ~2 best|favourite|winner|@dancers
    clap ~2 for ~2 best|favourite|winner|@applauded
    clap ~2 for the|that|this|your|each|every ~1 three|four
    who|which ~3 vote|voted|votes ~2 for|off|out
    lower|losing|worse|weaker|other half|group|pair|team ~~3 try|tries|harder|loses
    rank|ranking|league !and|of
    who|which ~3 won|wins|win
    who|which ~1 @dancers =lost $
    score|rate|grade ~1 each|every|this|that|the|them|it ~1 @dancers|dance|other|one|out
    #2..5 =best|=worst ~1 @dancers
    @dancers ~2 you|they ~1 like|liked|enjoy|enjoyed|prefer|preferred|love|loved ~1 best|most|more
    @dancers ~4 =better|=worse than
    in|into|through|reach ~2 final|finals|semi-final $
    beat ~1 other|another|them|boys|girls !two|four
    competition|contest|tournament|championship|talent-show ~~8 who|which|win|winner|wins|judge|lose
    who ~3 go|goes|going|sent|voted home
    who ~2 =out $
    you|they|half|others ~1 be|are|as ~2 judge|judges|jury|panel
    who|which ~2 was|were|is|are ~2 =good|=bad|=poor|=weak|=hopeless at
    who|which ~6 and|or who|which ~2 was|were|is|did|could not
    catch|tag|chase|get|tease|name ~1 whoever|who ~2 =last|=slowest
    whoever|who ~3 =last|=slowest ~6 out|catch|caught|sit|sits|lose|loses|forfeit
    put|place|sort|rank|order|list|line ~3 @dancers ~3 order ~~5 best|worst|good|favourite|
        favourites|top|bottom|most|win
    rank|grade|rate ~1 them|@dancers|dances|each
    thumb|thumbs up|down ~~4 for|if|from ~4 @dancers|dance|them|you|him|her|solo
    thumb|thumbs up or ~1 down
    as good|well|clever|strong as ~3 @dancers|other|others|them|theirs|boys|girls
    =better|=worse|=neater than ~4 @dancers|other|others|them|theirs|boys|girls
    who|which ~5 need|needs|should ~2 practise|practice|improve|rehearse ~2 most|more|before|first|$
    who|anyone|anybody|which|somebody ~4 stand|stands|stood out ~2 as|most|best
    let|lets|letting ~2 group|team|pair|row|side|class|half|others|us down
    who|anyone|anybody|which|whose|did|is ~6 real|proper|natural|talented|gifted|true ~1 dancer|
        performer|star
    dancer|group|pair|star|performer of the ~1 day|week|lesson|class|match|show
    come|comes|came|in|for ~1 =first|=second|=third|=last =place
    top ~1 #1..10|dancers|group|marks
    who|which ~2 @dancers ~2 come|comes|came first|last|second|third ~1 in ~1 competition|contest|
        race|class
    """,
    _LISTS,
)
"""Dancers are ranked against one another."""
