"""Pictures as they are published: only what is seen, sound, upright, and soon drawn."""
