"""The rules of lesson progression, one file each, in a folder for each family.

A rule yields findings: which document, where in it, what is wrong and how to mend it. It knows
neither line numbers nor grades; the pipeline signs what it yields.
"""
