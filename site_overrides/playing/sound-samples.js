// What sounds, as numbers, the same in the hall and in a saved file. No recording is used.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  // A skin that falls in pitch, and the stroke on it; or noise alone, in `bursts`, each rising in `rise` and
  // falling in `fall`; or a bell of so many hertz. Seconds, hertz, loudness from 0 to 1. A name with ! is the louder of its kind.
  const KINDS = {
    in: { long: 0.09, low: 820, high: 900, skin: 0.5, stroke: 0.12 },
    "beat!": { long: 0.32, low: 74, high: 190, skin: 0.75, stroke: 0.24 },
    beat: { long: 0.2, low: 130, high: 240, skin: 0.42, stroke: 0.16 },
    "soft beat!": { long: 0.24, low: 74, high: 150, skin: 0.2, stroke: 0.04 },
    "soft beat": { long: 0.16, low: 120, high: 180, skin: 0.12, stroke: 0.03 },
    "roll!": { long: 0.2, low: 110, high: 230, skin: 0.5, stroke: 0.2 },
    roll: { long: 0.08, low: 140, high: 220, skin: 0.24, stroke: 0.16 },
    "shaker!": { long: 0.14, noise: 0.5, bursts: [0], rise: 0.02, fall: 0.03 },
    shaker: { long: 0.11, noise: 0.26, bursts: [0], rise: 0.02, fall: 0.025 },
    "bell!": { long: 0.35, bell: 1047, ring: 0.34 },
    bell: { long: 0.34, bell: 1047, ring: 0.2 },
    "claps!": { long: 0.14, noise: 0.8, bursts: [0, 0.009, 0.017], rise: 0.001, fall: 0.014 },
    claps: { long: 0.12, noise: 0.45, bursts: [0, 0.008], rise: 0.001, fall: 0.012 },
  };
  const ATTACK = 0.001;
  // The partials of a bell as founders tune them, hum, prime, tierce, quint and nominal, and how loud each is (Rossing,
  // Science of Percussion Instruments, 2000, from memory).
  const PARTIALS = [[1 / 2, 0.25], [1, 0.3], [6 / 5, 0.2], [3 / 2, 0.1], [2, 0.35]];
  const FADES = 7; // of each partial, in parts a second for its share of the prime

  // The samples of one stroke, from -1 to 1, at `rate` samples a second.
  function samples(kind, rate) {
    const made = KINDS[kind];
    const found = new Float32Array(Math.round(made.long * rate));
    let turn = 0, seed = 1, last = 0;
    for (let n = 0; n < found.length; n += 1) {
      const t = n / rate;
      seed = (seed * 1103515245 + 12345) % 2147483648;
      const noise = seed / 1073741824 - 1;
      if (made.noise) {
        // the difference of two samples has no low part: dry seeds and hands have none
        found[n] = made.noise * 0.5 * (noise - last) * loudness(made, t) * (1 - t / made.long);
      } else if (made.bell) {
        found[n] = made.ring * ringing(made.bell, t) * Math.min(1, t / ATTACK) * (1 - t / made.long);
      } else {
        turn += (2 * Math.PI * (made.low + (made.high - made.low) * Math.exp(-t / 0.025))) / rate;
        const stroke = noise * made.stroke * Math.exp(-t / 0.012);
        const body = Math.cos(turn) * made.skin * Math.exp((-4 * t) / made.long);
        found[n] = (body + stroke) * Math.min(1, t / ATTACK) * (1 - t / made.long);
      }
      last = noise;
    }
    return found;
  }

  function ringing(prime, t) {
    return PARTIALS.reduce(
      (sum, [part, loud]) => sum + loud * Math.sin(2 * Math.PI * prime * part * t) * Math.exp(-FADES * part * t), 0);
  }

  function loudness({ bursts, rise, fall }, t) {
    const from = bursts.findLast((start) => start <= t);
    const since = t - from;
    return Math.min(1, since / rise) * Math.exp(-Math.max(0, since - rise) / fall);
  }

  counts.sounds = { samples, kinds: () => Object.keys(KINDS) };
})();
