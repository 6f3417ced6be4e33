"""Who made a thing, as a credit says it."""

from __future__ import annotations

import re

from build_tools.sentences.plain import plain_letters
from build_tools.sentences.sayings import Saying
from build_tools.sentences.word_lists import word_list

_NAME = re.compile(r"[A-ZÀ-Ö][\w’'.-]*(?: (?:[a-z&]{1,3} )?[A-ZÀ-Ö][\w’'-]*)+")
_ONE_NAME = re.compile(r"^[A-ZÀ-Ö][\w’'-]{2,}$")
_NOBODYS = word_list(
    "image images search google bing the a an internet web website unknown anonymous artist "
    "author various artists authors stock clip art clipart royalty free picture pictures photo "
    "photos wikipedia wikimedia commons pinterest youtube facebook instagram twitter tiktok "
    "found not known copied copy na n source sources online somebody someone nobody none no net "
    "page worksheet screenshot download downloaded public domain creative tbc tba see above "
    "ditto same us staff drive shared old saved scanned scan photocopy photocopied book i my "
    "our of and on from pixabay unsplash photographer maker made by"
)
_NO_MAKER = Saying(
    """
    unknown|unnamed|untraced|unattributed|uncredited|unsure
    not|never|n't known|sure|recorded|given|stated|credited|remember|know|traced|found
    no name|idea|author|artist|credit|maker
    na|none|nobody|tbc|tba|various
    n a
    somebody|someone|anybody|anyone
    internet|online|web|website|webpage|google|pinterest|youtube|wikipedia|facebook|instagram|
        clipart|screenshot|download|downloaded
    image|picture|web search
    copied|photocopied|scanned|saved|borrowed|grabbed ?from
    cannot|can't|don't|forgot|forgotten ?remember
    found|taken|got|lifted ~1 on|from|in|at|online
    shared|staff|hard drive|folder
    stock|free ~1 image|images|photo|photos|picture|pictures|art
    already on|there|in
    """
)
"""Words that give no maker."""
_A_MAKER = Saying(
    """
    class|pupil|pupils|teacher|author|school|bank|museum|gallery|archive|library|traditional|folk|
        publisher|choir|orchestra|council|society|trust|studio|workshop|collective|family|nature
    own work|drawing|photograph|recording
    """
)


def credits_nobody(by: str) -> bool:
    """Whether a credit names nobody who could be credited: Unknown, image search, copied."""
    if any(_real(match.group()) for match in _NAME.finditer(by)):
        return False
    if _NO_MAKER.mentioned(by):
        return True
    if _ONE_NAME.match(by.strip()) and _real(by):
        return False
    return _A_MAKER.mentioned(by) is None


def _real(name: str) -> bool:
    words = re.findall(r"[a-z]+", plain_letters(name))
    return any(word not in _NOBODYS for word in words)
