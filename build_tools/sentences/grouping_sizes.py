"""The sizes of group that words lead pupils into."""

from __future__ import annotations

from build_tools.sentences.getting_together import LEFT_OVER, LISTS
from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying

_LED_TO = {
    "alone": Saying(
        """
        space|spot|place|patch of ?your|their own
        find|back|to|in|into your|own|a own|new|fresh ?new space|spot|place
        on|by your|their own
        =yourself|=themselves
        one|each to|in|on ?a|each|every spot|space|mat|hoop
        split|break|spread|come|step|move|leave|walk ~1 away|out|from ~3 group|partner|others|four
        alone|solo|=singly|=individually
        split|break|separate|spread|scatter up|apart|out
        step|walk|move|go away until
        leave|goodbye|farewell|drop ~3 partner
        """
    ),
    "pairs": Saying(
        """
        a|your|their =two !pairs|other|others|more|people|dancers|friends|threes|lines|counts|feet
        =twos|=duos !make|join|meet|together|find|and|with
        in|into|to|back|stay|as ~1 =pairs
        stay|dance|work|sit|stand|remain|keep with|by|beside|to ~1 =partner
        find|face|choose|get|meet|turn|new|change|swap|switch|keep|pick ~4 =partner|=partners
        get|go|be|work with the|a|your|their ~1 =person
        find|choose|pick|get|ask|fetch|meet|invite|take|grab|join ~1 =somebody|=someone|=friend|
            =classmate|=neighbour|=anyone !and
        find|choose|pick|get|ask|fetch|meet|invite|take|grab one|a|another ~1 =person|=pupil|
            =dancer|=child|=friend|=body|=classmate
        turn|look|go|walk|stand|sit ~3 =person|=one|=neighbour ~2 beside|behind|opposite|
            next|left|right|nearest|closest
        =ones ~~6 =twos ~3 facing|opposite|behind|beside
        one|#2 behind|in|beside|facing the other
        turn|talk ~2 nearest|closest|next|new =person|=neighbour|=one
        """
    ),
    "threes": Saying(
        """
        =threes|=trios !<fours|four
        so|that|make|makes|become|have|in|into|be ~2 =threes|=trios
        need|needs|get|find|fetch|add|want ~1 one ~1 extra|more|other|spare person|dancer|pupil|
            child|friend
        your|same|old =three|=trio !pairs|counts|groups|others|moves
        you|become|make|form|into|as|in|of a|your ~1 =three|=trio !pairs|counts|breaths|steps|lines|
            groups|others|times|moves
        join|add|find|bring|take|pair|with ~2 one ~1 more|other|extra|free|spare !pair
        =group|=groups|team ~1 of|with =three
        triangle
        =three of you|us
        #3 to|at|on|in|per a|each|every|one mat|bench|table|hoop|corner|square
        you ~2 any|the|two ~2 two =others|=people|=friends|=dancers !and|pairs
        #1 leader ~3 #2 follower
        """
    ),
    "fours": Saying(
        """
        =fours|=quartets|=quartet
        a|your|into|become|make|in ~1 =four !pairs|counts|breaths|steps|lines|groups|others|times|
            moves|corners|walls|threes|words|cards
        =group|=groups|team ~1 of|with =four !pairs
        #2 =pairs|=twos !of ~4 join|make|become|form|together|meet
        =four of you|us
        #4 to|at|on|in|per a|each|every|one mat|bench|table|hoop|corner|square
        number|count|letter ~3 to|=in|by =four|=fours
        """
    ),
    "fives": Saying(
        """
        =fives|=quintets
        a|your|into|become|make|in ~1 =five !pairs|counts|breaths|steps|lines|groups|others|times
        #5 to|at|on|in|per a|each|every|one mat|bench|table|hoop|corner|square
        number|count|letter ~4 to =five
        =five of you|us
        =group|=groups|team ~1 of|with =five !pairs
        """
    ),
    "sixes": Saying(
        """
        =sixes
        =group|=groups|team ~1 of|with =six !pairs
        find|look|meet|join|spot|need|want|fetch|collect ~2 for|with ~1 #2 more|other|extra|
            different =pairs
        #3 =pairs !of ~4 join|make|become|form|together|meet
        #2 =threes ~4 join|make|become|form|together|meet
        make|become|be ~2 =six $
        number|count|letter ~4 to =six
        #6 to|at|on|in|per a|each|every|one mat|bench|table|hoop|corner|square
        join|with|find|meet|bring|take|add ~2 #2 ~1 other|more|different|nearest =pairs|=twos
        pair and|with #2 ~1 other|more =pairs|=twos
        =six of you|us
        """
    ),
    "a larger group": Saying(
        """
        =eights|=sevens|=tens|=nines
        =group|=groups|team ~1 of|with #7..40
        #4..20 =pairs !of|to|in|at ~4 join|make|become|form|together|meet|group|for
        #2..20 =fours|=fives|=sixes ~4 join|make|become|form|together|meet
        #5..40 of you|us
        #2 of =those|=them|=these ~2 join|meet|together|combine
        #2..20 =fours ~3 join|make|become|form|together|meet|combine|unite
        another|next|nearest|other|second =four
        boys|girls ~~9 girls|boys
        left|right|this|one|near|far|stage|window ~2 side|half|end|hand ~~12 right|left|that|other|
            far|near|piano|door ~2 side|half|end|hand
        as ~1 a|whole class
        all|whole class ~3 together|join|come|circle|line|round
        come|get|gather|meet together !with|in ~1 as|round|at
        line|queue up|along|in|behind
        ^ line|queue up
        single|=one file|line
        register|alphabetical|height order
        one|single|long line|row|file ~3 along|behind|down|at
        everyone|everybody|all ~2 in|into|round|to ?a|one|the circle|ring|line|middle|front|carpet|
            mat|drum
        #7..40 to|at|on|in|per a|each|every|one mat|bench|table|hoop|corner|square
        =group|=groups|team|teams ~1 of|with about|roughly|around|nearly #7..40
        two|three|both|equal ~1 =teams|=halves|=sides
        half ?of|the ~2 class|us|you|children|pupils|everyone|everybody|room|boys|girls ~~9 half|
            others|rest
        ?one|a|the ~1 big|whole|single|large|huge|great|long circle|ring|group|team
        all|everyone|everybody|whole ~3 together !with|in ?one|a circle|ring|line|group
        =all of us
        #2 ~1 line|row|team|side|=halves
        a|an|your|of =eight|=seven|=nine|=ten !counts
        make|form ~3 circle|ring|horseshoe|snake|semicircle|spiral
        horseshoe|semicircle|snake
        """
    ),
}
_SAME = {
    "pairs": Saying(
        """
        =pair|=pairs|partner|=two|=twos|couple|duo
        person|neighbour|somebody|someone|friend|classmate|each-other
        one with|and|to|of ~2 =two|=twos|@team
        """,
        LISTS,
    ),
    "threes": Saying("=three|=threes|trio|threesome|triangle !=pairs|counts"),
    "fours": Saying(
        """
        =four|=fours|quartet !=pairs|counts|join|meet|joined|walls|corners|mats|lines|circles|
            groups|teams !<two|three|all|both|another|next|nearest|different
        =square
        """
    ),
    "fives": Saying("=five|=fives|quintet !=pairs|counts"),
    "sixes": Saying("=six|=sixes !=pairs|counts"),
}
"""The grouping named by its own word."""
_COMES_TO = {
    "pairs": Saying("=ones|=as ~3 =twos|=bs"),
    "threes": Saying(
        """
        #2 =others|=friends|more|people|neighbours|dancers
        pair ~8 one|single|person
        """
    ),
    "fours": Saying(
        """
        #2 =pairs|=twos !of !<with|find|bring|add
        both =pairs
        #2 =people|=others|=dancers|=friends|=neighbours|more
        =pair ~~12 =pair|=pairs|another|second
        =pair ~~12 other !pairs
        another|other|second|nearest|nearby|close|closest|neighbouring|new|different|which|
            next ~1 =pair|couple|=pairs
        =pair|=pairs|two|couple in|on|behind|beside|opposite|near|across|who|that|nearest|closest|
            next
        pair|two join|visit|meet|greet
        nearest|closest|other|another|different =two
        #3 =others|=friends|more|people|neighbours
        double
        =pair =one|=a
        """
    ),
    "fives": Saying("#4 =others|=friends|more|people"),
    "sixes": Saying(
        """
        #3 =pairs !of
        #2 =threes
        =three ~~12 =three|=threes
        """
    ),
}
"""What brings pupils into it without its word."""


def other_groupings(text: str, grouping: str) -> tuple[str, ...]:
    """The groupings that words lead to where none of them leads to `grouping`.

    What one over does is left out of it. "A larger group" is also half of the class, or all.
    """
    rest = ". ".join(one for one in read(text).sentences if not LEFT_OVER.mentioned(one))
    if _SAME[grouping].said(rest):
        return ()
    led = tuple(name for name, words in _LED_TO.items() if name != grouping and words.said(rest))
    named = tuple(name for name in led if name not in ("alone", "pairs"))
    return named or (() if _COMES_TO[grouping].said(rest) else led)
