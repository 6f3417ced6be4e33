"""Looking at dance and talking about it."""
