"""What happens at one outlet when another opens."""
