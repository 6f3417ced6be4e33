// A score as an audio file: PCM, 16 bits, one channel (Microsoft and IBM, Multimedia Programming Interface, 1991).
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const RATE = 44100;

  counts.wav = (score) => {
    const laid = counts.beats.laid(score);
    const strokes = new Map(counts.sounds.kinds().map((kind) => [kind, counts.sounds.samples(kind, RATE)]));
    const long = Math.round(laid.seconds * RATE);
    const view = new DataView(new ArrayBuffer(44 + 2 * long));
    head(view, long);
    const mixed = new Float32Array(long);
    for (const { at, kind } of laid.events) {
      const start = Math.round((at * 60 * RATE) / score.tempo), stroke = strokes.get(kind);
      for (let n = 0; n < stroke.length && start + n < long; n += 1) mixed[start + n] += stroke[n];
    }
    mixed.forEach((sample, n) => {
      view.setInt16(44 + 2 * n, Math.round(32767 * Math.max(-1, Math.min(1, sample))), true);
    });
    return new Uint8Array(view.buffer);
  };

  function head(view, long) {
    const word = (at, text) => { for (let n = 0; n < 4; n += 1) view.setUint8(at + n, text.charCodeAt(n)); };
    const [two, four] = [(at, n) => view.setUint16(at, n, true), (at, n) => view.setUint32(at, n, true)];
    word(0, "RIFF"); four(4, 36 + 2 * long); word(8, "WAVE");
    word(12, "fmt "); four(16, 16); two(20, 1); two(22, 1); four(24, RATE); four(28, 2 * RATE); two(32, 2); two(34, 16);
    word(36, "data"); four(40, 2 * long);
  }
})();
