// Where a body's joints are at a moment of a move: sums only, no clock and no drawing. `form` is what
// views/diagrams/body_frames.py writes: frames of sixteen places, two letters each, which moves share.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const bodies = (bank.bodies ||= {});
  // The signs from 35 on, but those that a page or a text of a script would read as its own.
  const UNUSED = [38, 39, 60, 62, 92, 96];
  const CODES = Array.from({ length: 91 }, (_, n) => 35 + n).filter((code) => !UNUSED.includes(code));
  const LETTERS = String.fromCharCode(...CODES);
  const PLACES = 16;
  const STEP = 1.8;
  const LEAST = [-75, -4];
  const WHOLE = 1000;
  const EARLY = 0.35;

  // How much of a move is done when `time` of it is over, both 0 to 1; `feel` is letters.
  function eased(time, feel) {
    const felt = (letter) => feel.includes(letter);
    let done = time * time * (3 - 2 * time);
    if (felt("q")) done = 1 - (1 - Math.min(1, time / EARLY)) ** 3;
    else if (felt("e")) done = time;
    if (felt("s")) done **= 1.5;
    if (felt("l")) done **= 0.75;
    if (felt("b")) done += 0.035 * Math.sin(4 * Math.PI * (1 - done));
    if (felt("f")) done = 1 - (1 - done) ** 1.4;
    return Math.min(1, Math.max(0, done));
  }

  function wayDone(feel, keys, time) {
    let first = 0;
    for (const key of keys.length ? keys : [WHOLE]) {
      const last = key / WHOLE;
      if (time <= last || key === WHOLE) {
        return first + (last - first) * eased((time - first) / (last - first), feel);
      }
      first = last;
    }
    return 1;
  }

  function places(frames, number) {
    const start = number * 2 * PLACES;
    return Array.from(
      frames.slice(start, start + 2 * PLACES),
      (letter, n) => LEAST[n % 2] + STEP * LETTERS.indexOf(letter),
    );
  }

  // Head, loin, then shoulder, elbow and hand of each arm and hip, knee, ankle and toe of each leg, the right
  // one first: across and up by turns, a standing child being 100, when `time` (0 to 1) of the move is over.
  bodies.at = (form, number, time) => {
    const [feel, , keys, way] = form.moves[number];
    const part = wayDone(feel, keys, time) * WHOLE;
    let n = 0;
    while (n + 4 < way.length && way[n + 2] < part) n += 2;
    const share = (part - way[n]) / (way[n + 2] - way[n]);
    const last = places(form.frames, way[n + 3]);
    return places(form.frames, way[n + 1]).map((from, k) => from + (last[k] - from) * share);
  };
})();
