"""What is true of torque, units, labels and tightening order, whoever asks.

Pure values and rules: no clock, no file, no setting. What depends on the workshop is in views.
"""
