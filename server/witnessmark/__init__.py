"""Witnessmark: the record of an engine built at home, kept as a log that phones and the computer share."""
