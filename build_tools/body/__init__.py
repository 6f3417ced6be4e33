"""Bodies: how big a child is, what shape an action takes, how it gets from one to the next."""
