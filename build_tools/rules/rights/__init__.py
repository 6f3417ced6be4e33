"""Licences and permissions."""
