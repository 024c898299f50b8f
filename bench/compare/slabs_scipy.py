"""The slabs of the comparison as one would write them with SciPy: one problem after the other, method of lines, solve_ivp.

Same finite volumes, properties and face as slabs.py, whose parts are used; time is stepped by LSODA with a banded Jacobian.
To save time only every so-many-th slab is solved; the times printed are scaled up to all of them.

Usage: slabs_scipy.py FOLDER REPEATS STRIDE. Reads what slabs.py reads; writes scipy_<case>.bin (problem, minute, quantity)
and timings to standard output as CSV.
"""

import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

from slabs import CELSIUS, MINUTES, Slabs, table

RELATIVE = 1e-4
ABSOLUTE = 2e-2


def history(slab):
    """Returns core, surface and mean of one slab at each minute [K]."""

    def change(_, temperature):
        t = temperature[:, None]
        slab.conductances(t)
        slab.flows(t)
        c = slab.c
        return (slab.net / (slab.mass * (c[0] + t * (c[1] + t * c[2]))))[:, 0]

    minutes = 60.0 * np.arange(1, MINUTES + 1)
    found = solve_ivp(
        change, (0, minutes[-1]), slab.t[:, 0], "LSODA", minutes, rtol=RELATIVE, atol=ABSOLUTE, lband=1, uband=1
    )
    if not found.success:
        raise RuntimeError(found.message)
    values = np.empty((MINUTES, 3))
    shares = slab.volume / slab.volume.sum()
    for minute in range(MINUTES):
        t = found.y[:, minute : minute + 1]
        slab.conductances(t)
        values[minute, 0] = slab.middle[0] * t[0, 0] + slab.middle[1] * t[1, 0]
        values[minute, 1] = slab.surface.solve(t[-1], slab.face_conductance)[0][0]
        values[minute, 2] = shares @ t[:, 0]
    return values + CELSIUS, found.nfev


def main():
    folder, repeats, stride = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    slabs = table(f"{folder}/slabs.csv")
    edges = np.loadtxt(f"{folder}/edges.csv", skiprows=1)
    points = table(f"{folder}/latent.csv")
    latent = np.polyfit(points["celsius"], points["latent_heat_J_kg"], 3)
    nodes = 0.5 * (edges[1:] + edges[:-1])
    a, b = nodes[0] ** 2, nodes[1] ** 2
    Slabs.middle = (b / (b - a), -a / (b - a))
    chosen = range(0, len(slabs), stride)
    scale = len(slabs) / len(chosen)
    print("case,repeat,wall_s,cpu_s,steps")
    for material in table(f"{folder}/properties.csv"):
        name = material["case"]
        values = np.empty((len(chosen), MINUTES, 3))
        for repeat in range(-1, repeats):
            wall, cpu, calls = time.perf_counter(), time.process_time(), 0
            for place, i in enumerate(chosen):
                values[place], count = history(Slabs(slabs[i : i + 1], material, latent, edges, name == "WET"))
                calls += count
            wall, cpu = time.perf_counter() - wall, time.process_time() - cpu
            if repeat >= 0:
                print(f"{name},{repeat},{wall * scale:.6f},{cpu * scale:.6f},{calls / len(chosen):.1f}", flush=True)
        values.tofile(f"{folder}/scipy_{name}.bin")


if __name__ == "__main__":
    main()
