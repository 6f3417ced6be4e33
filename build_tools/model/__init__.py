"""Sound documents as frozen dataclasses. Nothing here judges or adds up."""
