"""A lesson on paper: what of it is printed, on how many sides, and in what size of words."""
