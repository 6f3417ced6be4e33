"""How loud a recording is: ITU-R BS.1770-4, which EBU R 128 and AES TD1008 measure by.

The two filters are those of the standard's tables 1 and 2, worked out for any rate as in its
annex's reference to analogue filters (the formulas are common practice; the tests hold them to the
tables). Blocks of 0.4 s, three quarters over one another, gated at -70 LUFS and then 10 LU below.
"""

from __future__ import annotations

import numpy as np

from composing.instruments import Samples

TARGET = -16.0
"""LUFS, the level for music and speech that is streamed: AES TD1008 (2021), from memory."""
MOST_PEAK = 10 ** (-1.0 / 20)
"""The highest sample, 1 dB below full scale: EBU R 128 (2020)."""
_ABSOLUTE, _RELATIVE, _OFFSET = -70.0, -10.0, -0.691
_BLOCK, _STEP = 0.4, 0.1

Filter = tuple[Samples, Samples]
"""What a digital filter multiplies its input and its output by."""


def shelf(rate: int) -> Filter:
    """The filter for a head: what is high counts for more."""
    gain, q, centre = 3.999843853973347, 0.7071752369554196, 1681.974450955533
    k, high = np.tan(np.pi * centre / rate), 10 ** (gain / 20)
    band = high**0.4996667741545416
    over = 1 + k / q + k * k
    up = np.array([high + band * k / q + k * k, 2 * (k * k - high), high - band * k / q + k * k])
    return up / over, np.array([1.0, 2 * (k * k - 1) / over, (1 - k / q + k * k) / over])


def high_pass(rate: int) -> Filter:
    """The filter that leaves out what is too low to count."""
    q, centre = 0.5003270373238773, 38.13547087602444
    k = np.tan(np.pi * centre / rate)
    over = 1 + k / q + k * k
    down = np.array([1.0, 2 * (k * k - 1) / over, (1 - k / q + k * k) / over])
    return np.array([1.0, -2.0, 1.0]), down


def loudness(sound: Samples, rate: int) -> float:
    """The integrated loudness of one channel, in LUFS."""
    # takes two seconds to load, which whoever gathers the tests would wait for
    from scipy.signal import lfilter

    heard = sound
    for up, down in (shelf(rate), high_pass(rate)):
        heard = lfilter(up, down, heard)
    long, step = int(_BLOCK * rate), int(_STEP * rate)
    power = np.array(
        [np.mean(heard[at : at + long] ** 2) for at in range(0, len(heard) - long + 1, step)]
    )
    power = power[power > 10 ** ((_ABSOLUTE - _OFFSET) / 10)]
    if not len(power):
        return -np.inf
    gate = 10 * np.log10(np.mean(power)) + _RELATIVE
    kept = power[10 * np.log10(power) > gate]
    return float(_OFFSET + 10 * np.log10(np.mean(kept)))


def levelled(sound: Samples, rate: int) -> Samples:
    """The sound at the target, its highest peaks rounded so that none goes over."""
    for _ in range(12):
        sound = sound * 10 ** ((TARGET - loudness(sound, rate)) / 20)
        ceiling = 0.97 * MOST_PEAK
        knee = 0.7 * ceiling
        over = np.abs(sound) > knee
        rest = ceiling - knee
        sound[over] = np.sign(sound[over]) * (
            knee + rest * np.tanh((np.abs(sound[over]) - knee) / rest)
        )
    return sound
