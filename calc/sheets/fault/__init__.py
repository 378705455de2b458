"""What is wrong here: which fault fits the signs and readings of a whole supply."""
