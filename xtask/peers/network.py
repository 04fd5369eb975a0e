"""The smaller work that the peers do: 1,000 particles of an eight-node hive network through a winter, hour by hour.

Eight nodes joined by conductances, a source that grows as the second node cools, food that is eaten, bees that die, and
an observation with systematic resampling every 72 hours. There is no air flow, no water, no cause of death. Every random
number is drawn beforehand, so that all peers can be held against one another.
"""

import numpy as np

PARTICLES = 1_000
HOURS = 4_344
EVERY = 72
HOUR = 3_600.0
NODES = 8
# Heat capacities, J/K; conductances between nodes and to the outside, W/K: a wooden hive, rounded (judgement).
CAPACITY = np.array([4e3, 6e3, 2.5e4, 1.2e2, 1.2e2, 1.0e4, 3.0e2, 6e3])
LINKS = [
    (0, 1, 1.2), (1, 2, 0.8), (1, 3, 0.25), (1, 4, 0.15), (2, 3, 0.5), (2, 4, 0.5), (2, 5, 0.6), (3, 5, 0.7),
    (4, 5, 0.7), (3, 7, 0.6), (3, 4, 0.4), (3, 6, 0.3), (6, 5, 0.2),
]
OUTSIDE = np.array([0.0, 0.0, 0.0, 0.05, 0.25, 0.9, 0.15, 0.35])
HONEY = 1.2e7


class World:
    """Particles that differ in conductance, bees and food, and the luck of their winter."""

    def __init__(self, particles=PARTICLES, hours=HOURS, seed=1):
        rng = np.random.default_rng(seed)
        joined = np.zeros((NODES, NODES))
        for a, b, g in LINKS:
            joined[a, b] = joined[b, a] = g
        links = joined[None] * rng.lognormal(0.0, 0.15, (particles, 1, 1))
        self.outside = OUTSIDE[None] * rng.lognormal(0.0, 0.2, (particles, 1))
        rate = links.copy()
        node = np.arange(NODES)
        rate[:, node, node] -= links.sum(2) + self.outside
        rate /= CAPACITY[None, :, None]
        self.matrix = np.eye(NODES)[None] - HOUR * rate
        self.bees = rng.normal(12_000.0, 2_500.0, particles).clip(2_000.0)
        self.food = rng.normal(20.0, 4.0, particles).clip(1.0)
        hour = np.arange(hours)
        self.air = -5.0 + 8.0 * np.cos(2 * np.pi * hour / 8_760 + 3.0) + 4.0 * np.sin(2 * np.pi * hour / 24)
        self.air += rng.normal(0.0, 1.5, hours)
        self.offset = rng.random(hours // EVERY + 1)
        self.particles, self.hours, self.seed = particles, hours, seed

    def luck(self):
        """One generator of the hourly luck; peers draw from it as they go."""
        return np.random.default_rng(self.seed + 1)

    def begin(self):
        """States at the start."""
        nodes = np.full((self.particles, NODES), 5.0)
        nodes[:, 0], nodes[:, 1] = 24.0, 12.0
        return nodes, self.bees.copy(), self.food.copy()


def ancestors(food, offset):
    """Systematic resampling by an observation of the food."""
    weight = np.exp(-0.5 * ((food - food.mean()) / 1.5) ** 2)
    weight /= weight.sum()
    at = (np.arange(food.size) + offset) / food.size
    return np.minimum(np.searchsorted(np.cumsum(weight), at), food.size - 1)


def source(shell, bees):
    """Heat of the bees in W: more as the cluster's shell cools, up to a ceiling."""
    return np.minimum(bees * 1e-3 * (1.0 + 0.22 * np.maximum(0.0, 18.0 - shell)), bees * 4.5e-3)
