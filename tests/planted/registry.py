"""Every planted fault, family by family."""

from __future__ import annotations

from tests.planted import (
    faults_bank,
    faults_body,
    faults_care,
    faults_dance,
    faults_floor,
    faults_heard,
    faults_joins,
    faults_lesson,
    faults_looking,
    faults_material,
    faults_motif,
    faults_order,
    faults_progression,
    faults_said,
    faults_sound,
    faults_steps,
    faults_told,
    faults_trade,
    faults_where,
    faults_whole,
    faults_wording,
    faults_words,
)
from tests.planted.faults import Planted

FAULTS: tuple[Planted, ...] = (
    *faults_progression.fault.faults,
    *faults_motif.fault.faults,
    *faults_dance.fault.faults,
    *faults_heard.fault.faults,
    *faults_lesson.fault.faults,
    *faults_looking.fault.faults,
    *faults_wording.fault.faults,
    *faults_bank.fault.faults,
    *faults_whole.fault.faults,
    *faults_order.fault.faults,
    *faults_material.fault.faults,
    *faults_joins.fault.faults,
    *faults_steps.fault.faults,
    *faults_told.fault.faults,
    *faults_said.fault.faults,
    *faults_care.fault.faults,
    *faults_floor.fault.faults,
    *faults_body.fault.faults,
    *faults_sound.fault.faults,
    *faults_trade.fault.faults,
    *faults_words.fault.faults,
    *faults_where.fault.faults,
)
