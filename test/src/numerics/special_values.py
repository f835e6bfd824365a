"""Values of the special functions of src to 25 digits, by mpmath 1.3.0: python3 special_values.py > special-values.json

poissonTail: regularized upper incomplete gamma function Q(terms, x). throughWall: heat let in at one face of an
insulated wall, 1 + 2 sum cos(n pi z) exp(-n^2 pi^2 f). ring: images of a bell around a ring of circumference 1,
sum exp(-(x + n)^2 / 2 s^2). betaRegularized: I_x(a, b); betaQuantile and tQuantile: found from the values of their
distributions, by bisection and Newton's method at 50 digits. Arguments are doubles, so that both sides mean the same number.
"""

import json

from mpmath import beta, betainc, cos, exp, gammainc, log, mp, mpf, nstr, pi, sqrt

mp.dps = 50


def digits(value):
    return nstr(value, 25, strip_zeros=False)


def tail(terms, x):
    return gammainc(terms, mpf(x), regularized=True)


def wall(f, part):
    reach = 12 + int(8 / f**0.5)
    return 1 + 2 * sum(cos(n * pi * mpf(part)) * exp(-(n * n) * pi**2 * mpf(f)) for n in range(1, reach))


def ring(x, variance):
    reach = 4 + int(16 * variance**0.5)
    return sum(exp(-((mpf(x) + n) ** 2) / (2 * mpf(variance))) for n in range(-reach, reach + 1))


def below(a, b, x):
    return betainc(mpf(a), mpf(b), 0, mpf(x), regularized=True)


def beta_quantile(chance, a, b):
    """Bisection of ln(x/(1 - x)), then Newton; the smaller tail is compared."""
    p, a, b = mpf(chance), mpf(a), mpf(b)
    low, high = mpf(-2000), mpf(2000)
    for _ in range(60):
        z = (low + high) / 2
        if below(a, b, 1 / (1 + exp(-z))) < p:
            low = z
        else:
            high = z
    x = 1 / (1 + exp(-(low + high) / 2))
    for _ in range(4):
        x -= (below(a, b, x) - p) * beta(a, b) / (x ** (a - 1) * (1 - x) ** (b - 1))
    return x


def t_quantile(chance, freedom):
    """t above 0 beyond which 1 - chance lies."""
    x = beta_quantile(2 * (1 - mpf(chance)), mpf(freedom) / 2, mpf(1) / 2)
    return sqrt(freedom * (1 - x) / x)


TERMS = [1, 2, 3, 5, 10, 20, 50, 100, 300, 1000]
PARTS = [1 / 64, 1 / 8, 1 / 2, 3 / 4, 1, 5 / 4, 2, 4]
FOURIER = [2.0**-k for k in range(-3, 8)]
DEPTHS = [0, 0.25, 0.5, 0.75, 1]
PLACES = [0, 0.125, 0.25, 0.375, 0.5]
VARIANCES = [2.0**-k for k in range(-3, 9)]
SHAPES = [(0.5, 0.5), (1, 4), (3, 0.5), (2, 9), (5, 6), (15, 0.5), (20, 80), (0.5, 120), (400, 3), (1000, 1500)]
SHARES = [2.0**-20, 1 / 64, 0.25, 0.375, 0.5, 0.75, 63 / 64]
CHANCES = [2.0**-20, 0.025, 0.05, 0.5, 0.9, 0.975]
FREEDOMS = [1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 60, 120, 1000]

rows = {
    "poissonTail": [
        [n, n * part, digits(tail(n, n * part))] for n in TERMS for part in PARTS if tail(n, n * part) > 1e-290
    ],
    "throughWall": [[f, z, digits(wall(f, z))] for f in FOURIER for z in DEPTHS if wall(f, z) > 1e-9],
    "roundRing": [[x, s2, digits(ring(x, s2))] for x in PLACES for s2 in VARIANCES],
    "betaRegularized": [
        [a, b, x, digits(below(a, b, x))] for a, b in SHAPES for x in SHARES if below(a, b, x) > 1e-290
    ],
    "betaQuantile": [[p, a, b, digits(beta_quantile(p, a, b))] for a, b in SHAPES for p in CHANCES],
    "tQuantile": [
        [p, n, digits(t_quantile(p, n))] for p in [0.75, 0.95, 0.975, 0.995, 1 - 2.0**-20] for n in FREEDOMS
    ],
}
print(json.dumps(rows, indent=1))
