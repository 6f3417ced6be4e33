"""The faults of reading, explained: what `explain` prints for problems found before any rule."""

from __future__ import annotations

READING_FAULTS: dict[str, str] = {
    "file-too-large": "Every file is small enough to be a unit, a lesson or a word list.\n\n"
    "A very large file is nearly always the wrong file, and reading it would hold up the rest.",
    "file-unreadable": "Every file can be opened.\n\nThe computer refused to open it: it may be "
    "open in another program, or you may not have permission.",
    "file-missing": "Every unit has its unit.md and at least one lesson; the bank has its bank.yml "
    "and its vocabulary.\n\nWithout them there is nothing to check.",
    "file-name-odd": "Every file and folder has a name that any computer can hold.\n\nFolders of "
    "units are named in small letters, figures and hyphens; lessons are lesson-1.md, lesson-2.md "
    "and so on; pictures lie in the unit's media folder.",
    "not-utf-8": "Every file is saved as UTF-8 text.\n\nOther encodings turn letters such as é "
    "into rubbish on somebody else's computer.",
    "hidden-character": "Text holds no hidden control characters.\n\nThey often come along when "
    "text is pasted from elsewhere, and they break lines where nobody sees it.",
    "no-fields": "A unit or lesson file starts with its fields between two lines of three hyphens.",
    "broken-yaml": "The fields can be read one by one.\n\nBad:  say: Ready: go low\n"
    'Good: say: "Ready: go low"',
    "repeated-field": "Each field is written once.\n\nIf it stood twice, one of the two would be "
    "lost without a word.",
    "read-as": "What was typed in another way than YAML has it is read as what it plainly is, and "
    "you are told how.\n\nThere is nothing to mend where that is what you mean. `tidy` writes the "
    "file so that every program reads it alike.\n\nBad:  phase: Explore\nGood: phase: explore",
    "hyphen-missing": "Each line of a list starts with a hyphen.\n\nA line without one is read as "
    "more of the line above it, so that two things to get ready become one. Where a line ends "
    "early and the next begins with a capital letter, you are asked.\n\n"
    "Bad:  collect: [A drum The poem]\nGood: collect: [A drum, The poem]",
    "anchor-used": "Fields are written out where they are used.\n\nLinks between places in a file "
    "are hard to see and easy to break.",
    "odd-number": "Numbers are ordinary numbers in figures.",
    "raw-html": "Units are written in plain words and Markdown, not in HTML.\n\nHTML from another "
    "school could run something on a teacher's computer.",
    "picture-in-notes": "Pictures are listed under the stimulus, or under the pictures of a "
    "lesson, with credit, licence and text version.",
    "shared-picture-missing": "A picture that units share is there, and its list says whose it "
    "is.\n\nIt lies in the folder pictures beside the folder units; pictures.yml there says once "
    "what it is, who made it and under which licence. Without either a page would have an empty "
    "frame, or a picture without a credit.\n\nBad:  shared: harbor\nGood: shared: harbour",
    "shared-picture-odd": "Each picture in the folder pictures stands in its list, and the other "
    "way round.\n\nWhat is in only one of the two can be shown by no unit.",
    "shared-picture-unused": "Each shared picture is shown by a unit.\n\nOne that no unit shows "
    "is easily forgotten: nobody sees it, and nobody asks about its licence.",
    "notes-too-long": "Notes are short enough to be read before a lesson.",
    "notes-too-deep": "Lists and quotations in notes have a few levels at most.\n\n"
    "Nobody finds their way in more, and some programs that show notes fall over them.",
    "notes-too-wide": "Tables in notes are small enough for a page.\n\nA row that is short is "
    "filled up to the width of its table, so a few letters can make a page that opens slowly.",
    "picture-unsound": "Every picture can be published as it is.\n\nIt is the kind of picture that "
    "its name says, it can be seen in full, and it does nothing but show itself. What a picture "
    "carries unseen, such as the place where it was taken, is not published; a photograph that "
    "lies on its side is turned upright.",
    "unsafe-link": "Links lead to a web address, a mail address or a heading of the same page.",
}
