"""The wordings fit the schemas in their settings."""
