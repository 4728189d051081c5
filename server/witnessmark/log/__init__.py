"""The log without a disk: what an entry is, how entries merge, what they amount to.

Here belong entries, stamps, digests, headings, merge rules and the workshop they fold into.
No database, clock, file or setting: time, random bytes and entries come in as arguments.
"""
