"""Motifs and how they are developed."""
