"""Label sheets: where labels lie on a page, what one label shows, and the exact-millimetre PDF.

Nothing here knows the log or the network: codes, names and the address come in as arguments.
"""
