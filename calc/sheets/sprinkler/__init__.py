"""Whether sprinklers water a piece of ground: pressure, spacing, what the soil takes in, hours."""
