"""The commands that check and keep the project itself; each module is one command."""
