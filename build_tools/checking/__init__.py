"""From a content folder to a bank of sound units and a report. Nothing here prints or exits."""
