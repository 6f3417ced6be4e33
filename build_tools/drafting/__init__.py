"""The draft of a new unit, complete in shape, as text. No files, no clock, no questions asked."""
