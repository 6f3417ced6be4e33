"""SVG drawings: read, held to what is known to be harmless, and written anew."""
