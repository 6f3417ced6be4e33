"""What keeps the project itself: its locks, notices, tools and tests."""
