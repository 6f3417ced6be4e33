"""What a question asks: yes or no, good or bad, or where to go from here."""

from __future__ import annotations

from build_tools.sentences.reading import Reading, Word, read
from build_tools.sentences.sayings import Saying
from build_tools.sentences.word_lists import word_list

_YES_OR_NO = word_list(
    "is are was were am did do does can could has have had will would shall should may might must "
    "isn't aren't wasn't weren't didn't don't doesn't can't couldn't hasn't haven't hadn't won't "
    "wouldn't shouldn't"
)
"""Words that start a question to which yes and no are answers."""
_OPEN = word_list("what which who whose whom where why how when")
_ASKS_TO = word_list(
    "describe tell explain show choose point name say list compare draw give share suggest think"
)
_LEADS_IN = word_list(
    "and but or so then in on at to from with for of by about just exactly only now well over "
    "through until under into behind during after before"
)
"""Words that may stand before the word that asks: in what order, and why."""
_TAG = word_list("it they he she we you there i that")

OPEN_REQUEST = Saying(
    """
    can|could|will|would you|anyone|anybody|somebody|someone|we|they ?please describe|explain|show|
        name|list|point|suggest|give|compare
    can|could|will|would you|anyone|anybody|somebody|someone ?please tell|say ?to us|me|everyone|
        something|more|what|how|why
    """
)

JUDGES = Saying(
    """
    =best|=better|=worst|=worse|=nicest|=favourite|=favourites|favorite
    be ~1 good|bad !idea|morning|fairy|witch|wolf|king|queen
    be|how|so|it|they|what|anything good|bad|well|successful|effective|impressive|brilliant|
        excellent
        !idea|morning
    be|do|look|dance|work|go ~4 v:well !as
    how good|well|successful|effective|impressive|beautiful|neat|brilliant
    good|bad about|at|bit|bits|part|parts|move|moves|thing|things
    you|we|anyone|anybody|everyone|class|who ~2 like|enjoy|prefer|love|admire !to
    most|least|more|less ~1 impressive|beautiful|exciting|interesting|skilful|successful|effective|
        creative|graceful|talented|enjoyable|perfect|convincing|elegant|boring|original
    improve|improvement|mistake|perfect|perfectly|wrong|wrongly|weakness|flaw
    #2 stars
    who|which|whose|group|pair|dancer|they ~6 most|least beautifully|skilfully|gracefully|neatly|
        convincingly|
        carefully|well|cleverly
    star and ~2 wish
    mark|score|grade|rate|rating|points ~4 out|ten|give|dance|group|them
    give ~4 mark|score|grade|star|stars|points
    #1..10 out of
    thumb|thumbs up|down|sideways
    deserve|win|winner|prize|award|gold|champion|medal
    ready ~3 show|perform
    proud|disappointing|disappointed|spoil|fail|ruin|clever|lovely
    """
)
"""The question asks for good or bad."""

DESCRIBES = Saying(
    """
    see|notice|hear|spot|watch|observe|picture
    what ~2 happen
    look like
    """
)
"""The question asks for what was seen."""

BEFORE_JUDGING = Saying(
    """
    before ~4 say|talk|decide|think|judge ~8 good|bad|better|best|like|well|favourite
    without ~3 say|tell|use ~8 like|good|bad|best|well|favourite
    best|better|good|right place|seat|view|spot|way|side to
    """
)
"""Good or bad is named to be put aside."""

COMPARES = Saying(
    """
    since|earlier|before|used ~2 lesson|to|week|time|now|then|month|start
    last|first lesson|week|time
    lesson #
    weeks|lessons|days ago
    so far
    at the start
    than ~1 when|before|earlier|then
    """
)
"""It looks back to earlier work."""

_LISTS = {
    "mend": (
        "keep change make mend add improve sharpen soften slow quicken move try leave swap fix cut "
        "drop extend shorten lengthen put go do help need alter adjust polish practise practice "
        "rehearse work develop strengthen hold take use differ differently clearer better bigger "
        "smaller slower faster longer stronger smoother begin start end finish join link place "
        "dance "
        "be borrow steal"
    ),
}
WHERE_TO_NEXT = Saying(
    """
    next time|week|lesson|run|go|dance|performance|show|round|attempt|term
    when|if|before you|we|they ~2 again|dance|run|perform|show|do ~6 again|next|tomorrow|time
    tomorrow
    on|by|for =monday|=tuesday|=wednesday|=thursday|=friday
    would|could|might|should|will|shall ~4 @mend
    can|could|might ~3 we|you|they|it|that|this|group|dance ~3 be|make|change|keep|improve|do
        ~4 clear+|better|big+|small+|slow+|fast+|quick+|strong+|smooth+|sharp+|high+|low+|long+|
            differ+|
        tight+|easy+|even|more
    need|needs|needed ~4 @mend|to|work|sort|mending|time|attention|care
    need ~3 mend|mending|sort|sorting|work|working|change|changing|practice|more|less|another
    still ~1 need|not|to|unclear|hard
    want|like|hope|plan|choose to ~2 @mend
    want ~1 to
    advice|suggestion|suggest|advise|tip|target|wish|recommend|aim|goal
    improve|mend|sharpen
    worth ~1 keep|take|try|use|mend
    keep|carry|take ~6 next|into|for|forward|on
    which|what ~4 keep|mend|change
    can|could|shall|should we|you|they ~1 make|do|get|help
    to|can make ~4 clear+|better|strong+|smooth+|sharp+|easy+|even
    where|what|how|which ~2 next $
    what next
    where ~2 from here
    practise|practice|rehearse ~3 first|most|more|again|next
    """,
    _LISTS,
)
"""The question asks what to keep, to change or to make clearer from here."""


def is_closed(question: str) -> bool:
    """Whether yes or no would answer it: "Did it work?", not "Did it work, and why?"."""
    reading = read(question)
    if OPEN_REQUEST.said(question) or any(_asks(reading, at) for at in range(len(reading.words))):
        return False
    firsts = [at for at in range(len(reading.words)) if _starts_clause(reading, at)]
    if any(reading.words[at].form in _YES_OR_NO for at in firsts):
        return True
    return any(w.form in _YES_OR_NO and _inverted(reading, at) for at, w in _words(reading))


def _words(reading: Reading) -> list[tuple[int, Word]]:
    return list(enumerate(reading.words))


def _inverted(reading: Reading, at: int) -> bool:
    """So is everyone happy?"""
    after = reading.words[at + 1].form if at + 1 < len(reading.words) else ""
    before = reading.words[at - 1].form if at else ""
    return before in ("so", "and", "but", "or", "well", "then", "now") and bool(after)


def _starts_clause(reading: Reading, at: int) -> bool:
    return at == 0 or reading.words[at - 1].clause != reading.words[at].clause


def _asks(reading: Reading, at: int) -> bool:
    """Whether a word asks for more than yes or no, and does not stand inside: tell which it was."""
    word = reading.words[at]
    if word.form in _OPEN:
        if _starts_clause(reading, at) and word.form != "when":
            return True
        if word.form == "when":
            return _starts_clause(reading, at) and _then_asks(reading, at)
        before = reading.words[at - 1].form
        return before in _LEADS_IN and _led_in(reading, at - 1)
    return word.form in _ASKS_TO and _starts_clause(reading, at) and not word.denied


def _led_in(reading: Reading, at: int) -> bool:
    """Whether only small words stand before it in its clause, or it joins a second question."""
    word = reading.words[at]
    if word.form in ("and", "but", "or", "so"):
        return True
    return _starts_clause(reading, at) or (
        reading.words[at - 1].form in _LEADS_IN and _led_in(reading, at - 1)
    )


def _then_asks(reading: Reading, at: int) -> bool:
    """When did it stop? Not: when it stopped, did you?"""
    after = reading.words[at + 1].form if at + 1 < len(reading.words) else ""
    return after in _YES_OR_NO


def judges(question: str) -> bool:
    """Whether it asks what was good or bad, and not what was seen."""
    if BEFORE_JUDGING.mentioned(question) or not JUDGES.mentioned(question):
        return False
    compares = COMPARES.mentioned(question) and not is_closed(question)
    return not DESCRIBES.mentioned(question) and not compares


def asks_where_to_next(question: str) -> bool:
    """Whether it asks what to keep, to change or to make clearer from here."""
    return WHERE_TO_NEXT.mentioned(question) is not None
