"""The words of the software's own on pages, in the language of the unit that is drawn.

English stands in the code and in the templates; every other language is one file, `<tag>.po`.
"""
