"""The advisers' pages: rules, writing, review."""
