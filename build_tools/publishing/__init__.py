"""A finished site put where readers find it, whole or not at all. Nothing here knows dance."""
