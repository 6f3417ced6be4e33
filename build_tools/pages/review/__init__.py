"""The advisers' page."""
