"""The unit's pages."""
