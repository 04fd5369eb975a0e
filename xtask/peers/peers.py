"""Times the peers on one thread and holds them against one another. Prints one line of JSON: ns per particle-hour."""

import json
import os
import time

for pool in ("OMP", "OPENBLAS", "MKL", "NUMBA"):
    os.environ[pool + "_NUM_THREADS"] = "1"

import numba  # noqa: E402
import numpy as np  # noqa: E402
from network import CAPACITY, EVERY, HOUR, HONEY, NODES, World, ancestors, source  # noqa: E402

REPEATS = 5
# Conductances stay with their place at a resampling, so that cached inverses stay valid: the same in every peer.


def numpy_winter(world, solve, lucky=True):
    """All particles of an hour at once."""
    nodes, bees, food = world.begin()
    luck = world.luck()
    for hour in range(world.hours):
        heat = source(nodes[:, 1], bees)
        right = nodes + HOUR * world.outside * world.air[hour] / CAPACITY
        right[:, 0] += HOUR * 0.35 * heat / CAPACITY[0]
        right[:, 1] += HOUR * 0.65 * heat / CAPACITY[1]
        nodes = solve(right)
        eaten, died = (luck.normal(0.0, 0.05, bees.size), luck.normal(0.0, 1e-4, bees.size)) if lucky else (0.0, 0.0)
        food = np.maximum(0.0, food - heat * HOUR / HONEY * np.exp(eaten))
        bees = bees * np.exp(died - 1.2e-4)
        bees = np.where(food > 0.0, bees, bees * 0.9)
        if hour % EVERY == EVERY - 1:
            of = ancestors(food, world.offset[hour // EVERY])
            nodes, bees, food = nodes[of], bees[of], food[of]
    return nodes, bees, food


@numba.njit(fastmath=False, cache=False)
def numba_hours(nodes, bees, food, inverse, outside, capacity, air, lucky):
    """Some hours, particle by particle."""
    right = np.empty(NODES)
    for p in range(bees.size):
        for hour in range(air.size):
            heat = min(bees[p] * 1e-3 * (1.0 + 0.22 * max(0.0, 18.0 - nodes[p, 1])), bees[p] * 4.5e-3)
            for i in range(NODES):
                right[i] = nodes[p, i] + HOUR * outside[p, i] * air[hour] / capacity[i]
            right[0] += HOUR * 0.35 * heat / capacity[0]
            right[1] += HOUR * 0.65 * heat / capacity[1]
            for i in range(NODES):
                total = 0.0
                for j in range(NODES):
                    total += inverse[p, i, j] * right[j]
                nodes[p, i] = total
            eaten = np.random.normal(0.0, 0.05) if lucky else 0.0
            died = np.random.normal(0.0, 1e-4) if lucky else 0.0
            food[p] = max(0.0, food[p] - heat * HOUR / HONEY * np.exp(eaten))
            bees[p] *= np.exp(died - 1.2e-4)
            if food[p] <= 0.0:
                bees[p] *= 0.9


def numba_winter(world, inverse, lucky=True):
    """The same winter between resamplings by compiled loops."""
    nodes, bees, food = world.begin()
    for first in range(0, world.hours, EVERY):
        air = world.air[first:first + EVERY]
        numba_hours(nodes, bees, food, inverse, world.outside, CAPACITY, air, lucky)
        if air.size == EVERY:
            of = ancestors(food, world.offset[first // EVERY])
            nodes, bees, food = nodes[of], bees[of], food[of]
    return nodes, bees, food


def main():
    small = World(particles=16, hours=720)
    inverse = np.linalg.inv(small.matrix)
    cached = numpy_winter(small, lambda r: np.matmul(inverse, r[:, :, None])[:, :, 0], lucky=False)
    afresh = numpy_winter(small, lambda r: np.linalg.solve(small.matrix, r[:, :, None])[:, :, 0], lucky=False)
    compiled = numba_winter(small, inverse, lucky=False)
    apart = max(float(np.abs(a - b).max() / np.abs(a).max()) for o in (afresh, compiled) for a, b in zip(cached, o))
    assert apart < 1e-9, f"the peers do not compute the same numbers: {apart}"

    world = World()
    inverse = np.linalg.inv(world.matrix)
    short = World(hours=144)
    ways = {
        "NumPy, cached inverse": (world, lambda: numpy_winter(world, lambda r: np.matmul(inverse, r[:, :, None])[:, :, 0])),
        "NumPy, solved afresh": (short, lambda: numpy_winter(short, lambda r: np.linalg.solve(short.matrix, r[:, :, None])[:, :, 0])),
        "numba, cached inverse": (world, lambda: numba_winter(world, inverse)),
    }
    # Turn about, so that a busy minute of the machine meets all of them; the best of each counts.
    best = {}
    for _ in range(REPEATS):
        for name, (of, run) in ways.items():
            begun = time.process_time()
            run()
            nanoseconds = 1e9 * (time.process_time() - begun) / (of.particles * of.hours)
            best[name] = min(best.get(name, np.inf), nanoseconds)
    print(json.dumps({"apart": apart, "nanoseconds": {name: round(ns, 1) for name, ns in best.items()}}))


if __name__ == "__main__":
    main()
