"""Pictures and recordings as they are published: only what is seen or heard, sound, soon shown."""
