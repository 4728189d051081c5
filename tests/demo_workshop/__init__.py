"""The invented workshop of the demo, written as the entries its two devices would have made."""
