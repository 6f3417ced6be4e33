"""A pack read without trust: nothing of it is written anywhere until all of it is verified."""
