"""A draft from a word-processor file: one heading a lesson, one table a step, no word lost."""
