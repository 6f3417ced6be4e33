"""What an author's sentences say, for the rules that judge them."""
