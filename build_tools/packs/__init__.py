"""The one file in which a unit goes to another school: made, read and taken in."""
