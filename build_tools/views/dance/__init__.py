"""Facts about the dance: what is danced, when, by whom, and how far it has come."""
