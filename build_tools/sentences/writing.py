"""Writing in the hall."""

from __future__ import annotations

from build_tools.sentences.sayings import Saying

_LISTS = {
    "paper": (
        "paper whiteboard whiteboards book books sheet sheets post-it post-its sticky sticky- "
        "note sticky-notes notebook notepad pad diary journal log logbook jotter sketchbook "
        "planner flip-chart flipchart clipboard label card cards chart board strip leaflet "
        "passport poster worksheet"
    ),
    "book": "diary journal log logbook notebook notepad jotter planner sketchbook",
    "text": (
        "page paragraph paragraphs sentence sentences essay report review line lines notes "
        "diary letter description evaluation list answers answer account summary reasons "
        "reason words story what how about three two down poem caption instructions target "
        "targets comment"
    ),
    "said": (
        "word words sentence sentences idea ideas answer answers comment caption thought thoughts"
    ),
}

WRITING = Saying(
    """
    write|writes|writing !<air|finger|arm|body|floor ~4 @text
    write|writes|writing|record|records ~6 in|on|onto|into ~3 @paper
    write|writes|writing ~2 it|them|this|that|your|their ~3 up|out|for $
    jot|jots|jotting
    scribble|scribbles|scribbling down
    note|notes|noting|list|record|records =down !<i|teacher|adult
    note|record|log|list|enter ~6 in|on|into ~3 @book|book|books|whiteboard|whiteboards|sheet|grid|
        table|post-it
    write|writes|note|record|log|list|put|enter|copy|add|draw|describe ~8 @book
    make|makes|draw|keep|start|write|do ~1 list|lists|tally|mind-map|spider-diagram|poster|plan
        ~1 of|for|on|about|with
    make|take|takes|keep|write ~1 =notes
    take|takes|taking down ~1 what|words|notes|moves|everything|their|the
    fill|fills|complete|completes ~2 in|out|the|a ~3 sheet|worksheet|form|table|chart|grid|booklet|
        questionnaire|evaluation|boxes|gaps|blanks|template|checklist|survey
    hand|hands ~1 it|them =in $
    worksheet|worksheets|exercise-book|exercise-books|workbook|workbooks|post-it|post-its|
        sticky-note|sticky-notes
    sticky note|notes
    mini|your|own|their whiteboard|whiteboards
    exercise|work|rough book|books
    half|a|one|whole page ~1 of|on|about|in|that
    side ~1 of ~1 a4|paper|writing
    paper|whiteboard|whiteboards|flip-chart|flipchart|poster|card|sheet ~~4 put|add|write|stick|
        leave ~3 @said
    put|add|stick|leave ~3 @said ~6 on|onto|under|underneath|below|beneath ~3 @paper|it|$
    add|put|write|finish ~2 sentence|sentences|caption|paragraph|paragraphs|bullet|bullets
    copy|copies ~2 out|down|from ~4 board|book|screen|sheet
    copy|copies ~4 word|words|sentence|sentences|list|title|date|definition|spelling|spellings
        ~6 into|in|out|down|off|from
    copy|copies ~6 into|in ~3 book|books|@book
    scribe|scribes|note-taker|note-takers
    ^ label|caption|annotate
    and|then|or|to|now|you v:label ~2 your|the|each|it|its|them|picture|drawing|diagram|map|photo
    annotate
    in writing
    type|types|typing up|out
    felt-tip|felt-tips|crayon|crayons
    felt tip|tips
    v:tick|circle|underline|highlight|colour !<a|in|the|round
        ~3 =box|=boxes|word|words|answer|answers|sheet|grid|column|checklist
    =pencil|=pencils !jump|jumps|roll|rolls|rolling|shape|shapes|spin|spins|stretch|thin|
        straight|line !<like|as|thin|straight|shape
    take|get|use|give|hold|bring|fetch|find|share|collect|hand|grab|need|pick|swap|lend|with|have|
        red|green|purple|felt|marker|ballpoint|colour|coloured|gel ~3 =pen|=pens
        !jump|shape|roll !<like|as|thin|straight|shape|sheep|lamb|flock|gate|fold|goat|animal|pony
    =pen|=pens ~3 paper|pencil|book|sheet|ready|write|down|away|tick|circle
    pencil|paper|book ~3 =pen|=pens
    clipboard|clipboards
    spelling|spellings|punctuation|handwriting
    """,
    _LISTS,
)
"""Pupils write."""
