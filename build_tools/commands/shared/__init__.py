"""What several commands take and say."""
