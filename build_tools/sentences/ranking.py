"""Teams picked by pupils, dancers ranked, feelings looked for and writing in the hall."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "dancers": "dancer pair group row half four three pupil child partner team person",
    "unseen": (
        "enjoy enjoying enjoyment effort fun feeling feelings pride proud nicely beautifully "
        "properly wonderfully brilliantly lovely confidence confident confidently happy happily "
        "creative creatively creativity imaginative musical musicality passion passionate "
        "commitment committed behaving behave sensible sensibly nice atmosphere mood spirit "
        "emotion emotions hard graceful gracefully elegance elegant quality talent talented flair "
        "impressive interesting"
    ),
}

TEAMS_PICKED = Saying(
    """
    captain|leader|best ~3 pick|picks|choose|chooses|select|selects|call|calls ~2 team|teams|row|
        rows|
        group|groups|side|sides|partner|partners|members|dancers|friends|people|players
    pick|choose|make|select ~2 team|teams|sides
    one at a time !from|to ~~6 chosen|picked|left|gone
    until ~2 all|everyone|everybody|nobody ~2 chosen|picked|left
    choose|pick|find|get|work|go|join|stand|sit|be|join ~2 best|own|favourite ?own friend|friends|
        mate|
        mates
    choose|pick|find|get|go|join|stand|work ~3 with|your|a|some|own|to friend|friends|mate|mates
    friend|friends ~1 group|groups|only|first
    whoever|anyone|whom|who|person|someone|somebody ~1 you ~1 like|likes|want|know|prefer|
        get ~2 best|
        most|with|on|$
    best|strongest|fastest|tallest|most ~1 first|popular
    last ~2 chosen|picked
    boys|girls ~3 against|versus|and|with ~2 girls|boys
    invite|ask ~2 friend|friends ~2 to|into
    who ~2 want|like to ~2 be|work|dance with
    """,
    _LISTS,
)
"""Pupils choose those they like, or are chosen before the class."""

RANKED = Saying(
    """
    =best|=worst|=weakest|=finest|=worse ~2 @dancers !work|ready
    who ~4 =best|=better|=worst|=winner|=won|=wins|=winners|=nicest|=favourite
    which|whose ~2 @dancers ~4 =best|=better|=worst|=won|=wins|=nicest|=favourite
    who|which ~2 @dancers ~3 most|more|least ~2 feeling|energy|effort|talent|graceful|beautiful|
        beautifully|impressive|skilful
    mark|marks|score|scores|point|points|grade|grades|star|stars ~3 out|for|each|to|from ~3 of|ten|
        five|@dancers|dance
    # out of ten|five|#5|#10
    give|award ~3 mark|marks|points|score|grade|grades|medal|medals|gold|prize
    which|who ~4 medal|prize
    winner|winners|loser|losers|champion|champions|runner-up
    vote|clap ~2 for ~2 best|favourite|winner|@dancers
    lower|losing|worse|weaker|other half|group|pair|team ~~3 try|tries|harder|loses
    rank|ranking|league !and|of
    who|which ~3 won|wins|win|beat
    put|place|sort ~3 @dancers ~3 order ~2 best|worst|good
    """,
    _LISTS,
)
"""Dancers are ranked against one another."""

UNSEEN = Saying(
    """
    @unseen
    do|doing|try|trying ~3 =best|=hard|=well
    dance|dances|dancing|it|moves|work|working|perform|performing|done|do|doing ~2 =well|=better
    good|great|lots|plenty|more|real ~1 energy|timing|expression|effort|behaviour|attitude|work|
        dancing|performance|feeling
    good ~1 shape|shapes ~~2 good
    most|more|real|much feeling|energy|effort
    perfect|perfectly|excellent|amazing|fantastic|super|outstanding
    really|truly feel|being|become|becomes
    in ~1 character|role
    """,
    _LISTS,
)
"""Something that nobody can see and point to."""

WRITING = Saying(
    """
    write|writes|writing !<air|finger|arm|body|floor ~4 page|paragraph|paragraphs|sentence|
        sentences|
        essay|report|review|line|lines|notes|diary|letter|description|evaluation|list|answers|
        answer|account|summary|reasons|reason|words|story|what|how|about|three|two|down
    fill|fills|complete|completes ~2 in|out|the|a ~3 sheet|worksheet|form|table|chart|grid|booklet|
        questionnaire
    hand|hands ~1 it|them =in $
    worksheet|worksheets|exercise-book|exercise-books|workbook|workbooks
    exercise|work|rough book|books
    half|a|one|whole page|side ~1 of|on|about|in|that
    copy|copies ~2 out|down|from ~4 board|book|screen|sheet
    pencil|pencils|pen|pens|clipboard|clipboards
    spell|spelling|punctuation
    """,
    _LISTS,
)
"""Pupils write."""
