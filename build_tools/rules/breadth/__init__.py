"""The four headings of dance: actions, space, dynamics and with whom."""
