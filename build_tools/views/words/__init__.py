"""The bank's own words: dance in plain words, licences, days, open places."""
