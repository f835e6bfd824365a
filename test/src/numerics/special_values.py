"""Values of the special functions of src to 25 digits, by mpmath 1.3.0: python3 special_values.py > special-values.json

poissonTail: regularized upper incomplete gamma function Q(terms, x). throughWall: heat let in at one face of an
insulated wall, 1 + 2 sum cos(n pi z) exp(-n^2 pi^2 f). ring: images of a bell around a ring of circumference 1,
sum exp(-(x + n)^2 / 2 s^2). Arguments are doubles, so that both sides mean the same number.
"""

import json

from mpmath import cos, exp, gammainc, log, mp, mpf, nsum, nstr, pi

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


TERMS = [1, 2, 3, 5, 10, 20, 50, 100, 300, 1000]
PARTS = [1 / 64, 1 / 8, 1 / 2, 3 / 4, 1, 5 / 4, 2, 4]
FOURIER = [2.0**-k for k in range(-3, 8)]
DEPTHS = [0, 0.25, 0.5, 0.75, 1]
PLACES = [0, 0.125, 0.25, 0.375, 0.5]
VARIANCES = [2.0**-k for k in range(-3, 9)]

rows = {
    "poissonTail": [
        [n, n * part, digits(tail(n, n * part))] for n in TERMS for part in PARTS if tail(n, n * part) > 1e-290
    ],
    "throughWall": [[f, z, digits(wall(f, z))] for f in FOURIER for z in DEPTHS if wall(f, z) > 1e-9],
    "roundRing": [[x, s2, digits(ring(x, s2))] for x in PLACES for s2 in VARIANCES],
}
print(json.dumps(rows, indent=1))
