"""What hot water asks of a supply."""
