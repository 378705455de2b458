"""A whole supply solved: points, pipes, pumps, outlets."""
