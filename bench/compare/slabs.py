"""The slabs of the comparison in NumPy: all problems at once in arrays (layer, problem).

Same finite volumes, same 60 nodes, same properties and the same third-order Rosenbrock-W method as the Java solver, with
one step size for all problems, chosen so that the worst of them keeps the tolerance. Tridiagonal systems are eliminated
layer by layer over all problems; results go to given arrays, so that little is allocated.

Usage: slabs.py FOLDER REPEATS TOLERANCE. FOLDER holds slabs.csv, properties.csv, latent.csv and edges.csv; results are
written next to them as numpy_<case>.bin (problem, minute, quantity) and timings to standard output as CSV.
"""

import sys
import time

import numpy as np

CELSIUS = 273.15
SIGMA = 5.670374419e-8
GAS = 8.31446261815324
WATER_MASS = 0.018015268
MASS_RATIO = 0.621945
AIR_CAPACITY_TIMES_LEWIS = 1006 * 0.88
PRESSURE = 101325.0
EMISSIVITY = 0.9
MINUTES = 60

# ROS34PW2: Rang, Angermann 2005, BIT 45:761
GAMMA = 4.3586652150845900e-01
ALPHA = np.array(
    [
        [0, 0, 0, 0],
        [8.7173304301691801e-01, 0, 0, 0],
        [8.4457060015369423e-01, -1.1299064236484185e-01, 0, 0],
        [0, 0, 1, 0],
    ]
)
GAMMAS = np.array(
    [
        [GAMMA, 0, 0, 0],
        [-8.7173304301691801e-01, GAMMA, 0, 0],
        [-9.0338057013044082e-01, 5.4180672388095326e-02, GAMMA, 0],
        [2.4212380706095346e-01, -1.2232505839045147e00, 5.4526025533510214e-01, GAMMA],
    ]
)
B = np.array([2.4212380706095346e-01, -1.2232505839045147e00, 1.5452602553351020e00, GAMMA])
EMBEDDED = np.array([3.7810903145819369e-01, -9.6042292212423178e-02, 5.0e-01, 2.1793326075422950e-01])
INVERSE = np.linalg.inv(GAMMAS)
STATE = ALPHA @ INVERSE
COUPLING = np.diag(np.diag(INVERSE)) - INVERSE
SOLUTION = B @ INVERSE
ERROR = (B - EMBEDDED) @ INVERSE
CONDITIONS = np.array([np.ones(4), ALPHA.sum(axis=1), GAMMAS.sum(axis=1)])
DENSE = (CONDITIONS.T @ np.linalg.solve(CONDITIONS @ CONDITIONS.T, [1.0, 0.0, 0.0])) @ INVERSE


def saturation_pressure(celsius):
    """IAPWS R7-97(2012), equation 30."""
    n = (1167.0521452767, -724213.16703206, -17.073846940092, 12020.824702470, -3232555.0322333)
    n += (14.915108613530, -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798)
    t = np.maximum(celsius, 0) + CELSIUS
    s = t + n[8] / (t - n[9])
    a = (s + n[0]) * s + n[1]
    b = (n[2] * s + n[3]) * s + n[4]
    c = (n[5] * s + n[6]) * s + n[7]
    root = 2 * c / (-b + np.sqrt(b * b - 4 * a * c))
    root *= root
    return 1e6 * root * root


class Surface:
    """Energy balance of the faces: convection, and in the wet case radiation and evaporation, by Newton's method."""

    def __init__(self, slabs, wet, activity, latent):
        self.medium = slabs["medium_K"] - CELSIUS
        self.coefficient = slabs["coefficient_W_m2K"]
        self.wet = wet
        self.activity = activity
        self.latent = latent
        self.wall_power = EMISSIVITY * SIGMA * slabs["medium_K"] ** 4
        self.mass = slabs["wet_share"] * self.coefficient * MASS_RATIO / AIR_CAPACITY_TIMES_LEWIS
        self.dry_air = PRESSURE - slabs["vapor_pressure_Pa"]
        self.guess = None

    def solve(self, cell, conductance):
        """Returns temperature of the face, heat flux into the cell and its derivative by the cell's temperature."""
        if not self.wet:
            through = self.coefficient * conductance / (self.coefficient + conductance)
            flux = through * (self.medium - cell)
            return cell + flux / conductance, flux, -through
        x = cell + 0.2 * (self.medium - cell) if self.guess is None else self.guess
        for _ in range(60):
            outer, slope = self.outer(x)
            step = (conductance * (x - cell) - outer) / (conductance - slope)
            x = x - step
            if np.abs(step).max() < 1e-5:
                break
        self.guess = x
        return x, conductance * (x - cell), conductance * slope / (conductance - slope)

    def outer(self, x):
        kelvin = x + CELSIUS
        cube = EMISSIVITY * SIGMA * kelvin**3
        latent = np.polyval(self.latent, x)
        saturation = saturation_pressure(x)
        pressure = self.activity * saturation
        open_part = np.maximum(PRESSURE - pressure, 1e-3 * PRESSURE)
        logarithm = np.log(self.dry_air / open_part)
        logarithm += np.maximum(pressure - 0.999 * PRESSURE, 0) / (1e-3 * PRESSURE)
        slope = pressure * latent * WATER_MASS / (GAS * kelvin * kelvin) / open_part
        outer = self.coefficient * (self.medium - x) + self.wall_power - cube * kelvin - self.mass * logarithm * latent
        return outer, -self.coefficient - 4 * cube - self.mass * slope * latent


class Slabs:
    """State and work arrays of all problems of one case."""

    def __init__(self, slabs, material, latent, edges, wet):
        self.extent = slabs["half_thickness_m"]
        self.count = len(self.extent)
        self.cells = len(edges) - 1
        nodes = 0.5 * (edges[1:] + edges[:-1])
        self.volume = np.diff(edges)
        self.up = (edges[1:-1] - nodes[:-1])[:, None]
        self.low = (nodes[1:] - edges[1:-1])[:, None]
        self.last_distance = edges[-1] - nodes[-1]
        self.c = [material["c0_J_kgK"], material["c1_J_kgK2"], material["c2_J_kgK3"]]
        self.k = [material["k0_W_mK"], material["k1_W_mK2"], material["k2_W_mK3"]]
        self.constant = self.c[1] == 0 and self.c[2] == 0 and self.k[1] == 0 and self.k[2] == 0
        self.mass = self.volume[:, None] * (material["dry_density_kg_m3"] * self.extent)
        self.surface = Surface(slabs, wet, material["water_activity"], latent)
        shape = (self.cells, self.count)
        start = slabs["start_K"] - CELSIUS
        self.t = np.repeat(start[None, :], self.cells, axis=0)
        c = self.c
        self.h = self.t * (c[0] + self.t * (c[1] / 2 + self.t * c[2] / 3))
        self.capacity = c[0] + self.t * (c[1] + self.t * c[2])
        self.conductance = np.empty((self.cells - 1, self.count))
        self.multiplier = np.empty_like(self.conductance)
        self.edge_work = np.empty_like(self.conductance)
        self.u = np.empty((4, *shape))
        self.pivot, self.net, self.work, self.state = (np.empty(shape) for _ in range(4))
        self.row = np.empty(self.count)
        if self.constant:
            self.conductance[:] = self.k[0] / (self.extent * (self.up + self.low))
            self.face_conductance = self.k[0] / (self.extent * self.last_distance)

    def temperatures(self, h):
        """Inverts the enthalpy polynomial: a series and one Newton step. Returns temperature and heat capacity."""
        c0, c1, c2 = self.c
        if self.constant:
            return h / c0, self.capacity
        a, b = 0.5 * c1 / c0, c2 / c0 / 3
        linear = h * (1 / c0)
        t = linear - linear * linear * (a + linear * b) * (1 - 2 * a * linear)
        t -= (t * (1 + t * (a + t * b)) - linear) / (1 + t * (2 * a + 3 * b * t))
        return t, c0 + t * (c1 + t * c2)

    def conductances(self, t):
        if self.constant:
            return
        k = t * self.k[2]
        k += self.k[1]
        k *= t
        k += self.k[0]
        below, above = k[:-1], k[1:]
        np.multiply(below, above, out=self.conductance)
        np.multiply(self.up, above, out=self.edge_work)
        self.edge_work += self.low * below
        self.edge_work *= self.extent
        self.conductance /= self.edge_work
        self.face_conductance = k[-1] / (self.extent * self.last_distance)

    def flows(self, t):
        np.subtract(t[1:], t[:-1], out=self.edge_work)
        self.edge_work *= self.conductance
        self.net[:-1] = self.edge_work
        self.net[-1] = 0
        self.net[1:] -= self.edge_work
        _, flux, slope = self.surface.solve(t[-1], self.face_conductance)
        self.net[-1] += flux
        return slope

    def factor(self, rate, slope):
        np.multiply(self.mass, self.capacity, out=self.pivot)
        self.pivot *= rate
        self.pivot[:-1] += self.conductance
        self.pivot[1:] += self.conductance
        self.pivot[-1] -= slope
        pivot, multiplier, conductance, row = self.pivot, self.multiplier, self.conductance, self.row
        np.reciprocal(pivot[0], out=pivot[0])
        for i in range(1, self.cells):
            m = multiplier[i - 1]
            np.multiply(conductance[i - 1], pivot[i - 1], out=m)
            np.multiply(conductance[i - 1], m, out=row)
            p = pivot[i]
            p -= row
            np.reciprocal(p, out=p)

    def solve(self, stage):
        """Solves one stage in place of the net flows; leaves the enthalpy's stage vector in u."""
        right, multiplier, row = self.net, self.multiplier, self.row
        for i in range(1, self.cells):
            np.multiply(multiplier[i - 1], right[i - 1], out=row)
            right[i] += row
        right *= self.pivot
        for i in range(self.cells - 2, -1, -1):
            np.multiply(multiplier[i], right[i + 1], out=row)
            right[i] += row
        np.multiply(right, self.capacity, out=self.u[stage])

    def attempt(self, step):
        rate = 1 / (step * GAMMA)
        for stage in range(4):
            if stage == 0:
                t = self.t
            else:
                combine(self.h, STATE[stage], self.u, stage, self.state, self.work)
                t, _ = self.temperatures(self.state)
            self.conductances(t)
            slope = self.flows(t)
            if stage == 0:
                self.factor(rate, slope)
            else:
                weighted(COUPLING[stage] / step, self.u, stage, self.state, self.work)
                self.state *= self.mass
                self.net += self.state
            self.solve(stage)

    def finish(self, tolerance):
        """Returns state, temperature and heat capacity at the end of the step, and the largest error of all problems."""
        weighted(ERROR, self.u, 4, self.state, self.work)
        self.state /= self.capacity
        error = np.sqrt(np.einsum("ij,ij->j", self.state, self.state).max() / self.cells) / tolerance
        end = np.empty_like(self.h)
        combine(self.h, SOLUTION, self.u, 4, end, self.work)
        t, capacity = self.temperatures(end)
        return end, t, capacity, error

    def run(self, tolerance, values):
        step, now, minute, steps = 0.1, 0.0, 0, 0
        shares = (self.volume / self.volume.sum())[None, :]
        while minute < MINUTES:
            left = MINUTES * 60 - now
            step = left if step > 0.999 * left else min(step, 0.55 * left if 0.55 * left > step else 0.5 * left)
            self.attempt(step)
            end, t, capacity, error = self.finish(tolerance)
            steps += 1
            factor = 0.9 * error ** (-1 / 3) if error > 0 else 5.0
            if error > 1:
                step *= max(factor, 0.15)
                continue
            minute = self.sample(now, step, t, minute, shares, values)
            self.h, self.t, self.capacity = end, t, capacity
            now += step
            step *= min(factor, 5.0)
        return steps

    def sample(self, now, step, t, minute, shares, values):
        if (minute + 1) * 60 > (now + step) * (1 + 1e-9):
            return minute
        weighted(DENSE, self.u, 4, self.state, self.work)
        self.state /= self.capacity
        mean0, mean1, mean_slope = (shares @ self.t)[0], (shares @ t)[0], (shares @ self.state)[0]
        keep = self.surface.guess
        while minute < MINUTES and (minute + 1) * 60 <= (now + step) * (1 + 1e-9):
            theta = min(((minute + 1) * 60 - now) / step, 1.0)
            square = theta * theta

            def at(i):
                return self.t[i] + (t[i] - self.t[i]) * square + self.state[i] * (theta - square)

            middle = self.middle[0] * at(0) + self.middle[1] * at(1)
            values[:, minute, 0] = middle + CELSIUS
            values[:, minute, 1] = self.surface.solve(at(-1), self.face_conductance)[0] + CELSIUS
            values[:, minute, 2] = mean0 + (mean1 - mean0) * square + mean_slope * (theta - square) + CELSIUS
            minute += 1
        self.surface.guess = keep
        return minute


def weighted(weights, u, count, out, work):
    np.multiply(u[0], weights[0], out=out)
    for j in range(1, count):
        if weights[j] != 0:
            np.multiply(u[j], weights[j], out=work)
            out += work


def combine(base, weights, u, count, out, work):
    weighted(weights, u, count, out, work)
    out += base


def table(path):
    return np.genfromtxt(path, delimiter=",", names=True, dtype=None, encoding="utf-8")


def main():
    folder, repeats, tolerance = sys.argv[1], int(sys.argv[2]), float(sys.argv[3])
    part = int(sys.argv[4]) if len(sys.argv) > 4 else 0
    slabs = table(f"{folder}/slabs.csv")
    part = part or len(slabs)
    edges = np.loadtxt(f"{folder}/edges.csv", skiprows=1)
    points = table(f"{folder}/latent.csv")
    latent = np.polyfit(points["celsius"], points["latent_heat_J_kg"], 3)
    nodes = 0.5 * (edges[1:] + edges[:-1])
    a, b = nodes[0] ** 2, nodes[1] ** 2
    Slabs.middle = (b / (b - a), -a / (b - a))
    print("case,repeat,wall_s,cpu_s,steps")
    for material in table(f"{folder}/properties.csv"):
        name = material["case"]
        values = np.empty((len(slabs), MINUTES, 3))
        for repeat in range(-1, repeats):
            wall, cpu = time.perf_counter(), time.process_time()
            steps = 0
            for first in range(0, len(slabs), part):
                piece = Slabs(slabs[first : first + part], material, latent, edges, name == "WET")
                steps += piece.run(tolerance, values[first : first + part])
            wall, cpu = time.perf_counter() - wall, time.process_time() - cpu
            if repeat >= 0:
                print(f"{name},{repeat},{wall:.6f},{cpu:.6f},{steps * part / len(slabs):.1f}", flush=True)
        values.tofile(f"{folder}/numpy_{name}.bin")


if __name__ == "__main__":
    main()
