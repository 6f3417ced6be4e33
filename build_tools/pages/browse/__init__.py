"""Looking through units by topic, year and subject."""
