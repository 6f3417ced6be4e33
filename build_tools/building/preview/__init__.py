"""The preview beside a writing author: what was saved, and pages served on this machine."""
