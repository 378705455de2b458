"""Without a battery: the sun pumps straight into a tank."""
