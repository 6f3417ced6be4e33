"""The bank's reference pages: safety, words, about."""
