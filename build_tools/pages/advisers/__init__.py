"""The advisers' door and its parts."""
