"""Faults in inclusion, reading, safety, rights, privacy and drafting: mostly in what is written."""

from __future__ import annotations

from build_tools.problem import FieldPath
from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place, unknown_word
from tests.planted.whole_edits import ADVICE

fault = Registry()


def _task(unit: EditableUnit, text: str, lesson: int = 1) -> Place | None:
    """Let the first step of making in a lesson have `text` for its task, and no advice."""
    file = unit.lesson_files[lesson - 1]
    for n, step in enumerate(unit.data[file]["steps"]):
        if step["phase"] in ("explore", "make", "develop"):
            for field in ADVICE:
                step.pop(field, None)
            return unit.set(file, ("steps", n, "task"), text)
    return None


def _in_first_lesson(unit: EditableUnit, path: FieldPath, value: object) -> Place:
    return unit.set(unit.lesson_files[0], path, value)


def _no_safety(unit: EditableUnit) -> None:
    """Take the advice on safety out of the lessons' lists, notes and other steps."""
    unit.bodies[unit.file] = "Notes.\n"
    unit.top["stimulus"].pop("content_note", None)
    for file, lesson in unit.lessons():
        unit.bodies[file] = "Notes.\n"
        lesson["safety"] = ["The school's risk assessment comes first."]
        for step in lesson["steps"]:
            for field in ADVICE:
                step.pop(field, None)


@fault("change-is-about-the-pupil", "set")
def change_is_about_the_pupil(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "easier"), "Weaker pupils do only four counts.")


@fault("demonstration-needed", "set")
def demonstration_needed(unit: EditableUnit) -> Place | None:
    place = _task(unit, "Watch me and copy.")
    if place is None:
        return None
    step = unit.get(place[0], place[1][:-1])
    for field in ("makes", "develops", "dances", "joins", "shows", "you"):
        step.pop(field, None)
    return place


@fault("no-part-for-not-dancing", "set")
def no_part_for_not_dancing(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("not_dancing",), "Sits on the bench and watches quietly.")


@fault("same-sentence-for-several-changes", "repeat")
def same_sentence_for_several_changes(unit: EditableUnit) -> Place | None:
    text = "Dance it slowly, one move at a time."
    _in_first_lesson(unit, ("steps", 1, "easier"), text)
    return _in_first_lesson(unit, ("steps", 1, "harder"), text)


@fault("separate-work-only", "set")
def separate_work_only(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    for step in unit.data[file]["steps"]:
        step.pop("easier", None)
        step.pop("harder", None)
    unit.data[file]["change"] = {"task": "Works separately with an adult in the corner."}
    return file, ("change", "task")


@fault("strip-or-count-missing", "drop")
def strip_or_count_missing(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        if motif["from"] == "pupils":
            for action in motif["actions"]:
                action.pop("as", None)
            return unit.file, ("motifs", name, "actions")
    return None


@fault("hard-to-read", "set")
def hard_to_read(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    hard = (
        "Investigate contrasting interpretations individually. "
        "Communicate imaginative possibilities considerately."
    )
    for step in unit.data[file]["steps"]:
        step.update(say=hard, task=hard, look_for=hard)
    return file, ("steps",)


@fault("line-hard-to-read", "set")
def line_hard_to_read(unit: EditableUnit) -> Place | None:
    hard = (
        "Investigate contrasting interpretations of expansive gestures individually, "
        "considering alternative dynamic possibilities."
    )
    return unit.set(unit.lesson_files[0], ("steps", 1, "task"), hard)


@fault("lesson-too-long-to-read", "stretch")
def lesson_too_long_to_read(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    for step in unit.data[file]["steps"]:
        for field in ("say", "easier", "harder", "task"):
            step[field] = "Walk on, turn and stop. " * 14 + field
    return file, ("lesson",)


@fault("look-for-too-long", "stretch")
def look_for_too_long(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "look_for"), "Soft knees. Eyes up. " * 5)


@fault("say-too-long", "stretch")
def say_too_long(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "say"), "Look for a space. Be still. " * 6)


@fault("sentence-too-long", "stretch")
def sentence_too_long(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("if", "loud"), "Put it down " + "and wait a little " * 8)


@fault("task-too-long", "stretch")
def task_too_long(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "task"), "Walk to a space. Be still. " * 7)


@fault("trade-word-unexplained", "set")
def trade_word_unexplained(unit: EditableUnit) -> Place | None:
    word = unknown_word(unit)
    if word is None:
        return None
    return _in_first_lesson(unit, ("steps", 0, "task"), f"Walk and stop. Now use {word}.")


@fault("two-words-for-one-idea", "set")
def two_words_for_one_idea(unit: EditableUnit) -> Place | None:
    first, second = unit.lesson_files[:2]
    unit.set(first, ("steps", 1, "task"), "Dance it in unison. Unison is all. In unison again.")
    return unit.set(second, ("steps", 1, "task"), "Dance it. Be synchronised.")


@fault("backwards-or-close-unguarded", "set")
def backwards_or_close_unguarded(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return _task(unit, "Run backwards to your place.")


@fault("bare-feet-without-check", "set")
def bare_feet_without_check(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("kit", "wear"), "School PE kit and bare feet")


@fault("contact-without-choice", "set")
def contact_without_choice(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return _task(unit, "Hold hands with your partner and lean back.")


@fault("deference-missing", "drop")
def deference_missing(unit: EditableUnit) -> Place | None:
    for _, lesson in unit.lessons():
        lesson["safety"] = ["Check the floor is dry and clear."]
    return unit.lesson_files[0], ("safety",)


@fault("fasting-dress-faith", "set")
def fasting_dress_faith(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("kit", "wear"), "Leotard and bare legs")


@fault("never-allowed", "set")
def never_allowed(unit: EditableUnit) -> Place | None:
    return _task(unit, "Three of you lift the fourth and carry her across.")


@fault("content-note-missing", "set")
def content_note_missing(unit: EditableUnit) -> Place | None:
    unit.top["stimulus"].pop("content_note", None)
    return unit.set(unit.file, ("stimulus", "what"), "A photograph of a street after the flood")


@fault("filming-or-posting", "set")
def filming_or_posting(unit: EditableUnit) -> Place | None:
    return _task(unit, "Film each pair on the tablet and watch it back.")


@fault("credit-is-no-credit", "set")
def credit_is_no_credit(unit: EditableUnit) -> Place | None:
    if not unit.top["stimulus"].get("items"):
        return None
    return unit.set(unit.file, ("stimulus", "items", 0, "by"), "Found on the internet")


@fault("hall-crossed-too-fast", "set")
def hall_crossed_too_fast(unit: EditableUnit) -> Place | None:
    for n, transition in enumerate(unit.top["transitions"]):
        if "counts" in transition:
            transition["counts"] = 2
            return unit.set(unit.file, ("transitions", n, "how"), "Run to the far wall and turn")
    return None


@fault("harder-takes-help-away", "set")
def harder_takes_help_away(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "harder"), "Dance it with no counting aloud.")


@fault("watchers-in-the-way", "set")
def watchers_in_the_way(unit: EditableUnit) -> Place | None:
    return _task(unit, "Half sit down just where they are. The rest dance all over the hall.")


@fault("stop-signal-is-dance-sound", "set")
def stop_signal_is_dance_sound(unit: EditableUnit) -> Place | None:
    unit.top["dance"]["sound"]["what"] = "Drum taps and a shaker"
    return _in_first_lesson(unit, ("steps", 0, "say"), "Two quick taps mean freeze.")


@fault("floor-check-missing", "drop")
def floor_check_missing(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return unit.lesson_files[0], ("safety",)


@fault("hard-on-the-body", "set")
def hard_on_the_body(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return _task(unit, "Jump thirty times like popping corn.")


@fault("landing-cue-missing", "drop")
def landing_cue_missing(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    _no_safety(unit)
    step = unit.data[file]["steps"][0]
    for field in ADVICE:
        step.pop(field, None)
    step["does"] = "Walk and jump"
    return unit.set(file, ("steps", 0, "task"), "Walk, then jump high.")


@fault("props-underfoot", "set")
def props_underfoot(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return _task(unit, "Drop your scarf on the floor and run on.")


@fault("hall-said-too-small", "set")
def hall_said_too_small(unit: EditableUnit) -> Place | None:
    sections = unit.data[unit.file]["sections"].values()
    if not any("apart" in one.get("start", {}) for one in sections):
        return None  # nobody knows where they stand
    return unit.set(unit.file, ("space", "hall"), "A clear hall. Needs 8 by 6 metres for 30.")


@fault("space-for-fewer", "set")
def space_for_fewer(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("space", "hall"), "A clear hall")


@fault("spinning-unguarded", "set")
def spinning_unguarded(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    _no_safety(unit)
    step = unit.data[file]["steps"][0]
    for field in ADVICE:
        step.pop(field, None)
    step["does"] = "Walk on"
    return unit.set(file, ("steps", 0, "task"), "Spin like a seed for eight counts.")


@fault("stop-signal-missing", "drop")
def stop_signal_missing(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    for file, lesson in unit.lessons():
        lesson.pop("notes", None)
        unit.bodies[file] = "Notes.\n"
        for step in lesson["steps"]:
            step.update(does="Walk", task="Walk and dance.")
            for field in ADVICE:
                step.pop(field, None)
    first = unit.lesson_files[0]
    return unit.set(first, ("steps", 0, "task"), "Run fast through the gaps.")


@fault("sudden-sound-or-dark", "set")
def sudden_sound_or_dark(unit: EditableUnit) -> Place | None:
    _no_safety(unit)
    return _in_first_lesson(unit, ("steps", 1, "task"), "A sudden loud crash of the cymbal. Go on.")


@fault("adapted-licence-broken", "insert")
def adapted_licence_broken(unit: EditableUnit) -> Place | None:
    unit.top["adapted_from"] = {
        "title": "Boats on the river",
        "publisher": "The dance unit bank",
        "edition": "1.0.0",
        "licence": "CC-BY-NC-SA-4.0",
    }
    return unit.file, ("licence",)


@fault("families-in-audience", "set")
def families_in_audience(unit: EditableUnit) -> Place | None:
    unit.bodies[unit.file] = "Notes.\n"
    for file in unit.lesson_files:
        unit.bodies[file] = "Notes.\n"
    return _task(unit, "Dance the whole for families.")


@fault("item-named-without-file-or-text", "drop")
def item_named_without_file_or_text(unit: EditableUnit) -> Place | None:
    items = unit.top["stimulus"].get("items", [])
    if not items:
        return None
    items[0].pop("file", None)
    items[0].pop("text_version", None)
    return unit.file, ("stimulus", "items", 0)


@fault("licence-narrower-in-part", "set")
def licence_narrower_in_part(unit: EditableUnit) -> Place | None:
    if not unit.top["stimulus"].get("items"):
        return None
    return unit.set(unit.file, ("stimulus", "items", 0, "licence"), "CC-BY-NC-4.0")


@fault("licence-text-of-others", "set")
def licence_text_of_others(unit: EditableUnit) -> Place | None:
    text = "DA:Cr1.1.4a: Identify ideas for choreography from a variety of stimuli"
    return unit.set(unit.file, ("curriculum", 0, "says"), text)


@fault("recorded-work-and-recording", "set")
def recorded_work_and_recording(unit: EditableUnit) -> Place | None:
    follows = unit.top["dance"]["sound"]["follows"]
    sound = {"kind": "recorded", "what": "Morning, recorded", "follows": follows, "lasts": 500}
    unit.top["dance"]["sound"] = sound
    return unit.file, ("dance", "sound", "what")


@fault("looks-like-personal-data", "set")
def looks_like_personal_data(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("not_dancing",), "Keeps the beat; ask office@school.example.")


@fault("open-place-left", "set")
def open_place_left(unit: EditableUnit) -> Place | None:
    return _in_first_lesson(unit, ("steps", 1, "task"), "✎ what pupils try")


@fault("open-place", "set")
def open_place(unit: EditableUnit) -> Place | None:
    unit.top["draft"] = True
    return _in_first_lesson(unit, ("steps", 1, "task"), "✎ what pupils try")
