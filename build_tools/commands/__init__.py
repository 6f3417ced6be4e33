"""The commands, each a file named after it: it reads arguments, asks, prints, and gives a code."""
