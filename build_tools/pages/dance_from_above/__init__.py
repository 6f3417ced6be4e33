"""The dance from above: the class moving to the counts beside the figure of what is danced."""
