// The drum as numbers, the same in the hall and in a saved file. No recording is used.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  // A skin that falls in pitch, and the stroke on it. Seconds, hertz, loudness from 0 to 1.
  const KINDS = {
    phrase: { long: 0.32, low: 74, high: 190, skin: 0.75, stroke: 0.24 },
    count: { long: 0.2, low: 130, high: 240, skin: 0.42, stroke: 0.16 },
    in: { long: 0.09, low: 820, high: 900, skin: 0.5, stroke: 0.12 },
  };
  const ATTACK = 0.001;

  // The samples of one stroke, from -1 to 1, at `rate` samples a second.
  function samples(kind, rate) {
    const { long, low, high, skin, stroke } = KINDS[kind];
    const found = new Float32Array(Math.round(long * rate));
    let turn = 0, seed = 1;
    for (let n = 0; n < found.length; n += 1) {
      const t = n / rate, left = 1 - t / long;
      turn += (2 * Math.PI * (low + (high - low) * Math.exp(-t / 0.025))) / rate;
      seed = (seed * 1103515245 + 12345) % 2147483648;
      const noise = (seed / 1073741824 - 1) * stroke * Math.exp(-t / 0.012);
      const body = Math.cos(turn) * skin * Math.exp((-4 * t) / long);
      found[n] = (body + noise) * Math.min(1, t / ATTACK) * left;
    }
    return found;
  }

  counts.sounds = { samples };
})();
