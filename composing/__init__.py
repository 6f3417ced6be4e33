"""The bank's own music, made out of numbers: the recordings in units' media folders.

`python -m composing` renders every piece into its unit. A piece is a module of its own: its notes,
who plays them, and where the recording lies. It needs what the tests need (numpy, scipy,
soundfile); nothing of it reaches a published page but the recordings.
"""
