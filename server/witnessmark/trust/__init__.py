"""Trust: the workshop's own certificate authority, its name on the network, first contact.

Here belongs what lets a phone believe that it talks to the right computer. Keys of devices are
rows of the store and are not here; nor is anything that speaks Flask.
"""
