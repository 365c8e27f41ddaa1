"""A path worked anew by SciPy from measured depth, inclination and azimuth alone.

Between two stations the tangent turns along the great circle that joins their directions (Slerp), evenly with
measured depth; the place is the integral of the tangent (quad). That is minimum curvature without its formula.
Reads {"stations": [[md, inclination, azimuth], ...], "at": [md, ...]}, depths in one unit, angles in degrees; prints
{"stations": [[tvd, north, east], ...], "at": [tvd, ...]}, and its own version.
"""

import json
import sys

import numpy
import scipy
from scipy.integrate import quad
from scipy.spatial.transform import Rotation, Slerp

asked = json.load(sys.stdin)
stations = asked["stations"]


def facing(inclination, azimuth):
    """Turns the downward axis to a direction: first by the inclination toward north, then by the azimuth."""
    return Rotation.from_euler("yz", [inclination, azimuth], degrees=True)


def tangents(first, second):
    """The turn that carries the first direction straight to the second, spread evenly; gives tangent(fraction)."""
    start, end = (facing(*station[1:]).apply([0, 0, 1]) for station in (first, second))
    axis = numpy.cross(start, end)
    sine = numpy.linalg.norm(axis)
    if sine == 0:
        return lambda fraction: start
    angle = numpy.arctan2(sine, numpy.dot(start, end))
    spread = Slerp([0, 1], Rotation.from_rotvec([[0, 0, 0], axis / sine * angle]))
    return lambda fraction: spread(fraction).apply(start)


def moved(tangent, length, fraction):
    """North, east and down travelled over a fraction of the length."""
    return [
        length * quad(lambda at: tangent(at)[axis], 0, fraction, epsabs=1e-12, epsrel=1e-12)[0] for axis in range(3)
    ]


places = [numpy.zeros(3)]
legs = []
for first, second in zip(stations, stations[1:]):
    tangent, length = tangents(first, second), second[0] - first[0]
    legs.append((first[0], length, tangent, places[-1]))
    places.append(places[-1] + moved(tangent, length, 1))

depths = []
for md in asked["at"]:
    start, length, tangent, place = next(
        (leg for leg in reversed(legs) if leg[0] <= md), legs[0]
    )
    depths.append(place[2] + moved(tangent, length, (md - start) / length)[2])

print(
    json.dumps(
        {
            "version": scipy.__version__,
            "stations": [[float(down), float(north), float(east)] for north, east, down in places],
            "at": [float(depth) for depth in depths],
        }
    )
)
