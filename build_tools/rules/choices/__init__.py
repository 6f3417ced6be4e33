"""What pupils choose: from what, who does, in which step, and that they choose at all."""
