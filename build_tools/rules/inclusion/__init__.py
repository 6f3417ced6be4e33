"""A part in the dance for every pupil."""
