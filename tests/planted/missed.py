"""Copies whose fault is not reported where it was put: each is to be judged, then taken out.

Either the unit still says elsewhere what the edit took away, or the rule reads past the fault. A
copy that comes to be found fails the test until it is taken off this list.
"""

from __future__ import annotations

MISSED: frozenset[str] = frozenset(
    {
        "backwards_or_close_unguarded in reception-toys",
        "backwards_or_close_unguarded in rock-pool",
        "backwards_or_close_unguarded in seeds-on-the-move",
        "backwards_or_close_unguarded in weaving-shed",
        "choice_settled_too_late in two-sections-bakery",
        "danced_before_made in improvised-weather",
        "danced_before_made in learned-market-dance",
        "danced_before_made in reception-toys",
        "danced_before_made in seeds-on-the-move",
        "danced_before_made in weaving-shed",
        "everyday_action_left_as_mime in seeds-on-the-move",
        "everyday_action_left_as_mime in weaving-shed",
        "fasting_dress_faith in seeds-on-the-move",
        "form_named_wrongly in weaving-shed",
        "lesson_too_long_to_read in reception-toys",
        "more_watching_than_moving in two-sections-bakery",
        "no_choice_by_pupils in learned-market-dance",
        "opposite_efforts_side_by_side in paper-boats",
        "opposite_efforts_side_by_side in seeds-on-the-move",
        "question_word_never_taught in weaving-shed",
        "return_never_settled in learned-market-dance",
        "return_never_settled in rock-pool",
        "same_lookers_all_unit in paper-boats",
        "same_lookers_all_unit in reception-toys",
        "section_made_in_too_little_time in rock-pool",
        "stop_signal_missing in reception-toys",
        "stop_signal_missing in rock-pool",
        "sudden_sound_or_dark in rock-pool",
        "too_few_whole_runs in learned-market-dance",
        "too_long_sitting in two-sections-bakery",
        "too_much_new_at_once in paper-boats",
        "trade_word_unexplained in weaving-shed",
    }
)
