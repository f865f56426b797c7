"""The fixed rule of `fixedRuleTransmissionLoss` with numpy: all frequencies and angles of a wall in one array.

Reads the same file as layered-wall.c and prints in the same form."""
import sys
import time

import numpy as np

with open(sys.argv[1]) as file:
    numbers = iter([float(word) for word in file.read().split()])


def take(count):
    return np.array([next(numbers) for _ in range(count)])


c, rho0, pressure, viscosity, prandtl = take(5)
samples, bands = int(next(numbers)), int(next(numbers))
lower, upper = take(bands), take(bands)
cosine = take(int(next(numbers)))
weight = take(len(cosine))
walls = take(16 * int(next(numbers))).reshape(-1, 16)

start = time.perf_counter()
z0 = rho0 * c
hz = (lower[:, None] * (upper / lower)[:, None] ** ((np.arange(samples) + 0.5) / samples)).reshape(-1, 1)
omega = 2 * np.pi * hz
k0 = omega / c
sine2 = 1 - cosine**2


def passive(rho, bulk):
    return rho.real + 1j * np.minimum(0, rho.imag), bulk.real + 1j * np.maximum(0, bulk.imag)


def porous(resistivity, frame):
    y = hz / resistivity
    z = z0 * (1 + (0.07 - 0.107j) * y**-0.632)
    k = k0 * (1 + (0.109 - 0.16j) * y**-0.618)
    rho, bulk = passive(z * k / omega, z / k * omega)
    total = frame + rho0
    rho, bulk = passive((rho * total - rho0**2) / (rho + total - 2 * rho0), bulk)
    return omega**2 * rho / bulk, omega * rho, 1


def gap(width):
    gamma = rho0 * c * c / pressure
    s = width / 2 * np.sqrt(1j * omega * rho0 / viscosity)
    t = s * np.sqrt(prandtl)
    bulk = gamma * pressure / (1 + (gamma - 1) * np.tanh(t) / t)
    return omega**2 * rho0 / bulk, omega * rho0, 1 - np.tanh(s) / s


def cross(p, v, fluid, thickness):
    square, product, trace = fluid
    kz = np.sqrt(square - trace * k0**2 * sine2)
    phase = kz * thickness
    sine, cos = 1j * np.sin(phase), np.cos(phase)
    z = product / kz
    return cos * p + z * sine * v, sine / z * p + cos * v


loss = []
for w in walls:
    stiffness = w[12] * w[10] ** 3 / (12 * (1 - w[13] ** 2))
    critical = c * c / (2 * np.pi) * np.sqrt(w[10] * w[11] / stiffness)
    shear = 1 + stiffness * k0**2 / (5 / 6 * w[12] / (2 * (1 + w[13])) * w[10]) * sine2
    mass = omega * w[10] * w[11]
    plate = 1j * mass * (1 - (hz / critical) ** 2 * (1 + 1j * w[14]) * sine2**2 / shear)
    v = cosine / z0
    p = 1 + plate * v
    p, v = cross(p, v, gap(w[9]), w[9])
    p = p + 1j * omega * w[8] * v
    p, v = cross(p, v, porous(w[6], w[7]), w[5])
    p, v = cross(p, v, porous(w[3], w[4]), w[2])
    p = p + w[0] * 1j * omega * w[1] / (w[0] + 1j * omega * w[1]) * v
    incident = cosine * p + z0 * v
    share = 4 * cosine**2 / (incident.real**2 + incident.imag**2)
    loss.append(-10 * np.log10((share @ weight).reshape(bands, samples).mean(axis=1)))
end = time.perf_counter()
print(f"{(end - start) * 1e9:.0f}")
for row in loss:
    print(" ".join(f"{value:.15g}" for value in row))
