"""Diagrams as SVG text, each with the same in words. No style attributes, no script."""
