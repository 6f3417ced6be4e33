"""What a language says in a way of its own that no table of messages can hold."""
