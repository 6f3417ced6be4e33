"""What a language says by a grammar of its own, that no table of messages can hold."""
