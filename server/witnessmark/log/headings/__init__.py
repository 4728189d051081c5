"""One module a heading: the shape of its body and the merge rule it picks. No other code."""
