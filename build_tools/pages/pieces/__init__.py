"""Pieces that several pages are made of, each with its template."""
