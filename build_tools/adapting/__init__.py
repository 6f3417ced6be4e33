"""A unit of one's own from another: its words kept, its line and its licence carried on."""
