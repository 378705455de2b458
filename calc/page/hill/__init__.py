"""A hillside in section: heights to scale, pipes as they branch, water over every outlet."""
