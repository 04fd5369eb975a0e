## How a colony can end.

ends-starved = starved
ends-beside-food = starved beside food
ends-too-small = too small or too cold
ends-queen = queen failed
ends-mites = mites
ends-other = common losses
