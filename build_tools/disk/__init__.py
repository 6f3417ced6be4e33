"""Files and folders as they lie: where ours are, which count, how they are written for sure."""
