"""A person's question answered from a Workshop: what is this, may I use it, where did I stop?

Pure: a view reads a Workshop value and gives plain JSON. It never stops on odd data, and holds
no sentences: codes and facts go out, the page makes words of them.
"""
