"""Your first unit: ten minutes to a printed lesson."""
