"""Witnessmark: the record of an engine built at home, a log that phones and computer share."""
