"""Reference values for trials, by scipy: likelihood intervals of d', power of paired t tests, and a mixed model fitted with
full matrices by REML with Satterthwaite's degrees of freedom from numerical derivatives. Run: python3 trial_reference.py > trial_reference.csv
"""
import numpy as np
from scipy import integrate, optimize, stats

print("# Reference values made by trial_reference.py with scipy %s; one row is one number." % __import__("scipy").__version__)
print("group,case,quantity,value")

phi, Phi = stats.norm.pdf, stats.norm.cdf
PC = {
    "triangle": lambda d: 2 * integrate.quad(
        lambda z: (Phi(-z * 3**0.5 + d * (2 / 3) ** 0.5) + Phi(-z * 3**0.5 - d * (2 / 3) ** 0.5)) * phi(z), 0, 12)[0],
    "duo-trio": lambda d: 1 - Phi(d / 2**0.5) - Phi(d / 6**0.5) + 2 * Phi(d / 2**0.5) * Phi(d / 6**0.5),
    "2-afc": lambda d: Phi(d / 2**0.5),
    "4-afc": lambda d: integrate.quad(lambda z: phi(z - d) * Phi(z) ** 3, d - 12, d + 12)[0],
}
GUESS = {"triangle": 1 / 3, "duo-trio": 0.5, "2-afc": 0.5, "4-afc": 0.25}
for method, k, n in [("triangle", 13, 24), ("triangle", 8, 24), ("triangle", 24, 24), ("duo-trio", 20, 30),
                     ("2-afc", 17, 20), ("2-afc", 10, 20), ("4-afc", 9, 16)]:
    pc = PC[method]
    log = lambda d: (k * np.log(pc(d)) if k else 0) + ((n - k) * np.log(max(1 - pc(d), 1e-15)) if k < n else 0)
    share = k / n
    best = 0.0 if share <= GUESS[method] else np.inf if k == n else optimize.brentq(lambda d: pc(d) - share, 0, 14, xtol=1e-12)
    top = 0.0 if k == n else log(best)
    limit = top - stats.chi2.ppf(0.95, 1) / 2
    low = 0.0 if best == 0 or log(0) >= limit else optimize.brentq(lambda d: log(d) - limit, 0, min(best, 14), xtol=1e-12)
    high = np.inf if k == n else optimize.brentq(lambda d: log(d) - limit, best, 14, xtol=1e-12)
    case = "%s %d/%d" % (method, k, n)
    for name, value in (("distance", best), ("low", low), ("high", high),
                        ("p", stats.binom.sf(k - 1, n, GUESS[method]))):
        print("likelihood,%s,%s,%.9g" % (case, name, value))

for n, gap, spread, alpha in [(2, 3, 1, 0.05), (5, 1, 1, 0.05), (20, 1, 1.5, 0.05), (34, 1, 2, 0.05), (128, 0.5, 2, 0.05),
                              (16, 1.5, 2, 0.01), (30, 0, 1, 0.05)]:
    t = stats.t.ppf(1 - alpha / 2, n - 1)
    shift = gap * n**0.5 / spread
    power = stats.nct.sf(t, n - 1, shift) + stats.nct.cdf(-t, n - 1, shift) if gap else alpha
    print("paired-power,%d %g %g %g,power,%.9g" % (n, gap, spread, alpha, power))


def reml(rows, name):
    tasters = sorted({r[0] for r in rows})
    samples = sorted({r[1] for r in rows})
    y = np.array([r[2] for r in rows], float)
    X = np.array([[r[1] == s for s in samples] for r in rows], float)
    Z = np.array([[r[0] == t for t in tasters] for r in rows], float)
    N, p = X.shape

    def parts(logs):
        V = np.exp(logs[0]) * Z @ Z.T + np.exp(logs[1]) * np.eye(N)
        W = np.linalg.inv(V)
        C = np.linalg.inv(X.T @ W @ X)
        b = C @ X.T @ W @ y
        r = y - X @ b
        return np.linalg.slogdet(V)[1] - np.linalg.slogdet(C)[1] + r @ W @ r, b, C

    best = min((optimize.minimize(lambda v: parts(v)[0], [s, 0], method="Nelder-Mead",
                                  options=dict(xatol=1e-10, fatol=1e-12, maxiter=20000)) for s in (-2, 0, 2)),
               key=lambda o: o.fun)
    x = best.x
    dev, b, C = parts(x)
    h = 1e-3
    e = np.eye(2) * h
    H = np.array([[(parts(x + e[i] + e[j])[0] - parts(x + e[i] - e[j])[0] - parts(x - e[i] + e[j])[0]
                    + parts(x - e[i] - e[j])[0]) / (4 * h * h) for j in range(2)] for i in range(2)])
    A = 2 * np.linalg.inv(H)
    for i, s in enumerate(samples):
        print("reml,%s,mean %s,%.9g" % (name, s, b[i]))
    print("reml,%s,taster sd,%.9g" % (name, np.exp(x[0] / 2)))
    print("reml,%s,rest sd,%.9g" % (name, np.exp(x[1] / 2)))
    for i in range(p):
        for j in range(i + 1, p):
            c = np.zeros(p)
            c[i], c[j] = 1, -1
            f = lambda v: c @ parts(v)[2] @ c
            g = np.array([(f(x + e[k]) - f(x - e[k])) / (2 * h) for k in range(2)])
            print("reml,%s,error %s-%s,%.9g" % (name, samples[i], samples[j], f(x) ** 0.5))
            print("reml,%s,degrees %s-%s,%.9g" % (name, samples[i], samples[j], 2 * f(x) ** 2 / (g @ A @ g)))
    L = np.hstack([-np.ones((p - 1, 1)), np.eye(p - 1)])
    print("reml,%s,ratio,%.9g" % (name, (L @ b) @ np.linalg.inv(L @ C @ L.T) @ (L @ b) / (p - 1)))


import csv
import os
with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "trial_scores.csv")) as file:
    table = list(csv.DictReader(line for line in file if not line.startswith("#")))
for data in dict.fromkeys(r["data"] for r in table):
    reml([(r["taster"], r["sample"], float(r["score"])) for r in table if r["data"] == data], data)
