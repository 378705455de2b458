"""A whole supply over a day: level of every tank, the pump's hours, and which outlets fail when."""
