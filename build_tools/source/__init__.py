"""Files in, located plain data out. Nothing here knows schemas or dance."""
