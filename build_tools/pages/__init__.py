"""What each page holds, as dataclasses with every field explained. Nothing here opens files."""
