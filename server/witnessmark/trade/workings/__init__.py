"""Workings: computations done at the bench without any record.

Here belong what each working asks, how typed values are read, and how its result is told; the
same on the phone, the command line and the API. No rule of the trade itself: those stand in the
modules of ``trade`` and are only put together here.
"""
