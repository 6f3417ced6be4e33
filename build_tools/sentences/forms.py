"""The forms an English word takes in text: `hold` is held, holds and holding.

Word lists name a word once; this spells it out. A form that nobody writes does no
harm; a form too few would leave a sentence unread. The tests hold it to simplemma's dictionary.
"""

from __future__ import annotations

from functools import cache

from build_tools.sentences.word_lists import word_list

_IRREGULAR = """
arise arose arisen; awake awoke awoken; be am is are was were been being; bear bore borne;
beat beaten; become became; begin began begun; bend bent; bind bound; bite bit bitten; blow blew
blown; break broke broken; breed bred; bring brought; build built; buy bought; catch caught; choose
chose chosen; cling clung; come came; creep crept; cut; deal dealt; dig dug; do does did done;
draw drew drawn; dream dreamt; drink drank drunk; drive drove driven; eat ate eaten; fall fell
fallen; feed fed; feel felt; fight fought; find found; flee fled; fling flung; fly flew flown;
forget forgot forgotten; freeze froze frozen; get got gotten; give gave given; go goes went gone;
grind ground; grow grew grown; hang hung; have has had; hear heard; hide hid hidden; hit; hold held;
hurt; keep kept; kneel knelt; know knew known; lay laid; lead led; lean leant; leap leapt; learn
learnt; leave left; lend lent; let; lie lay lain lying; light lit; lose lost; make made; mean meant;
meet met; pay paid; put; quit; read; ride rode ridden; ring rang rung; rise rose risen; run ran;
say said; see saw seen; seek sought; sell sold; send sent; set; shake shook shaken; shine shone;
shoot shot; show shown; shrink shrank shrunk; shut; sing sang sung; sink sank sunk; sit sat; sleep
slept; slide slid; sling slung; speak spoke spoken; spell spelt; spend spent; spill spilt; spin
spun; split; spread; spring sprang sprung; stand stood; steal stole stolen; stick stuck; sting
stung; stride strode; strike struck; string strung; swear swore sworn; sweep swept; swell swollen;
swim swam swum; swing swung; take took taken; teach taught; tear tore torn; tell told; think
thought; throw threw thrown; tread trod trodden; understand understood; wake woke woken; wear wore
worn; weave wove woven; weep wept; win won; wind wound; wring wrung; write wrote written;
child children; foot feet; half halves; hoof hooves; knife knives; leaf leaves; life lives; loaf
loaves; man men; person people persons; scarf scarves; headscarf headscarves;
self selves; shelf shelves; tooth teeth;
wolf wolves; woman women; thief thieves; mouse mice; goose geese; calf calves;
eye eyed eyeing eying; stomach stomachs;
far farther further; good better best; bad worse worst; little less least; many more most
"""
_TABLE: dict[str, frozenset[str]] = {
    words[0]: frozenset(words[1:]) for row in _IRREGULAR.split(";") if (words := row.split())
}
UNCHANGING = word_list(
    "a about above across after against all almost alone along always an and any anybody anyone "
    "apart around as as-if at-least at-most away before behind beside between both but by can "
    "could down during each each-other either else enough ever every everybody everyone for "
    "from has her him his how i if in inside instead into it its just least many may me might "
    "more most much must my near never no nobody none nor not nothing of off often on once only "
    "onto or other our out outside over own quite rather shall she should so some somebody "
    "someone than that the their them then there these they this those through till to together "
    "too towards twice under until up upon us very we what when where which while who whoever "
    "whom whose why will with within without would yes yet you your"
)
"""Words with no other forms: toes are no form of to."""
_NOT = word_list(
    "aren't can't couldn't didn't doesn't don't hadn't hasn't haven't isn't mustn't needn't "
    "shouldn't wasn't weren't won't wouldn't"
)
"""What `n't` stands for: a text has it only at the end of a verb."""
_VOWELS = "aeiou"
_HISS = ("s", "x", "z", "ch", "sh")


@cache
def forms(lemma: str) -> frozenset[str]:
    """The word and its forms as a noun and as a verb; `soft+` also softer, softly, softness.

    `=word` is that form alone, `n't` every verb that ends so.
    """
    if lemma == "n't":
        return _NOT
    if lemma.startswith("="):
        return frozenset((lemma[1:],))
    if lemma.endswith("+"):
        plain = lemma[:-1]
        return forms(plain).union(_of_quality(plain))
    if lemma in UNCHANGING:
        return frozenset((lemma,))
    regular = frozenset((lemma, _with_s(lemma), *_past_and_ing(lemma)))
    return regular | _TABLE.get(lemma, frozenset())


def forms_of(line: str) -> frozenset[str]:
    """All forms of all the words in the line."""
    return frozenset().union(*(forms(word) for word in line.split()))


def _with_s(word: str) -> str:
    if word.endswith(_HISS) or (word.endswith("o") and word[-2:-1] not in _VOWELS):
        return f"{word}es"
    if word.endswith("y") and word[-2:-1] not in _VOWELS:
        return f"{word[:-1]}ies"
    return f"{word}s"


def _past_and_ing(word: str) -> tuple[str, ...]:
    if word.endswith("ie"):
        return f"{word}d", f"{word[:-2]}ying"
    if word.endswith("e") and not word.endswith(("ee", "oe", "ye")):
        return f"{word}d", f"{word[:-1]}ing"
    if word.endswith("e"):
        return f"{word}d", f"{word}ing"
    if word.endswith("y") and word[-2:-1] not in _VOWELS:
        return f"{word[:-1]}ied", f"{word}ing"
    if word.endswith("c"):
        return f"{word}ked", f"{word}king"
    stems = _stems(word)
    return (*(f"{stem}ed" for stem in stems), *(f"{stem}ing" for stem in stems))


def _stems(word: str) -> tuple[str, ...]:
    """The word before -ed and -ing: its last letter doubled as in hopped, or both as in travel."""
    short = word[-1:] not in f"{_VOWELS}wxy" and word[-2:-1] in _VOWELS
    if not short or word[-3:-2] in _VOWELS:
        # a u after q is no vowel: squat, quit
        return (word, f"{word}{word[-1]}") if word[-4:-2] == "qu" or word.endswith("l") else (word,)
    one_syllable = sum(letter in f"{_VOWELS}y" for letter in word) == 1
    if one_syllable:
        return (f"{word}{word[-1]}",)
    return (word, f"{word}{word[-1]}")


def _of_quality(word: str) -> tuple[str, ...]:
    if word.endswith("y"):
        stem = word[:-1]
        return f"{stem}ier", f"{stem}iest", f"{stem}ily", f"{stem}iness", f"{word}er", f"{word}ly"
    if word.endswith("le"):
        return f"{word}r", f"{word}st", f"{word[:-1]}y", f"{word}ness"
    if word.endswith("e"):
        return f"{word}r", f"{word}st", f"{word}ly", f"{word}ness"
    stems = _stems(word)
    compared = (f"{stem}{ending}" for stem in stems for ending in ("er", "est"))
    ly = f"{word}ally" if word.endswith("ic") else f"{word}ly"
    return (*compared, ly, f"{word}ness", f"{word}en", f"{word}ened", f"{word}ening")
