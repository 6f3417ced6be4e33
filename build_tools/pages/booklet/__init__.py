"""The unit as a booklet."""
