"""The words by which rules of rights know an audience, a recording and a line that asks first."""

from __future__ import annotations

from build_tools.sentences.word_lists import word_list
from build_tools.sentences.wordings import wording

AUDIENCE_WORDS = word_list(
    "family families parent parents carer carers grandparents governors visitors assembly concert "
    "public guests fair fete fête"
)
"""A text with none of these words has no outsiders watching."""
_GUESTS = (
    r"(?:famil(?:y|ies)|parents?|carers?|grandparents|governors|visitors|guests|the[ ]public"
    r"|(?:a|the|your|our)[ ](?:school[ ])?(?:assembly|concert|fair|f[eê]te)|assembly)"
)
AUDIENCE = wording(
    "famil/parent/carer/governor/visitor/guest/assembly/concert/public/fair/fete/fête",
    rf"""
      (?:show|perform|dance|present|share|invit|film|record)\w*\b [^.!?\n]{{0,60}}?
      \b(?:for|to|before|with|in[ ]front[ ]of|in|at)?[ ]?(?:\w+[ ]){{0,2}}{_GUESTS}
    | (?:{_GUESTS})\b [^.!?\n]{{0,30}}\b (?:watch|come|coming|invited|see[ ]the[ ]dance|are[ ]here)
    """,
)
ASK_FIRST = wording(
    "licen/permission/copyright/right/ask the school/ask your school/school first/check with",
    r"""
      licen[cs]\w* | permissions? | copyright | performing[ ]rights?
    | (?:ask|check)\b [^.!?\n]{0,30}\b school [^.!?\n]{0,80}\b
      (?:music|film\w*|record\w*|visitors|audience|families)
    """,
)

LEFT_TO_TEACHER = wording(
    "any /own/choo/choice/you have/you may/your school",
    r"any | (?:your|the[ ]teacher's|the[ ]class's)[ ]own | choose | choice | of[ ]your[ ]choosing"
    r"| you[ ](?:have|may) | your[ ]school",
)
WHO_RECORDED_IT = wording(
    "record/played/perform/sung/perform",
    r"""
      (?:record(?:ed|ing)|played|performed|sung|spoken)[ ](?:\w+[ ])?(?:by|from|in|at|for|of[ ]our)
      [ ][^,;.]+
    | recording[ ](?:made[ ])?(?:by|from)[ ][^,;.]+
    | (?:own|our|author's|teacher's|field)[ ]recording
    """,
)
WHO_MADE_IT = wording(
    "by /compos/written/tradition/folk/made/own/old/field/natur/rain/sea/wind/bird/from",
    r"""
      (?:composed|written|made|arranged|music|tune|song|piece)?[ ]?by[ ][^,;.]+
    | compos\w* | traditional | folk | written | made[ ]for | own
    | sounds?[ ]of | birdsong | (?:sea|rain|wind|river|street|factory|loom)\w*[ ]sounds?
    """,
)
