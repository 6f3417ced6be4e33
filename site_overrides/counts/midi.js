// A score as a Standard MIDI File, format 0: percussion on channel 10, a marker where each stretch starts, a
// cue where each piece of what is heard starts, and every word said as a lyric.
// Tempo is in microseconds for a quarter note, 60,000,000 / beats a minute (Standard MIDI Files 1.0, 1988).
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const TICKS = 480; // for one beat
  // Key of the percussion map and loudness: General MIDI Level 1, 1991 (from memory): 36 bass drum, 37 side
  // stick, 39 hand clap, 45 low tom, 47 low-mid tom, 70 maracas. A bell has a pitch: program 113, tinkle bell, of the
  // sound set of the same, on the first channel.
  const DRUM = {
    in: [37, 100],
    "beat!": [36, 120], beat: [45, 80], "soft beat!": [36, 50], "soft beat": [45, 36],
    "roll!": [47, 110], roll: [47, 60], "shaker!": [70, 110], shaker: [70, 64], "claps!": [39, 120], claps: [39, 80],
  };
  const BELL = { "bell!": [84, 110], bell: [84, 76] };
  const TINKLE_BELL = 113;
  const SOUNDING = 20; // ticks: less than from one stroke of a roll to the next at the slowest tempo

  counts.midi = (score) => {
    const laid = counts.beats.laid(score);
    const end = Math.round(laid.beats * TICKS);
    const tempo = Math.round(60e6 / score.tempo);
    const events = [
      { tick: 0, bytes: text(3, score.title) },
      { tick: 0, bytes: [0xff, 0x51, 3, tempo >> 16, (tempo >> 8) & 255, tempo & 255] },
      { tick: 0, bytes: [0xff, 0x58, 4, score.phrase, 2, 24, 8] },
      ...laid.marks.map(({ at, stretch }) => ({ tick: tick(at), bytes: text(6, score.stretches[stretch].name) })),
      ...laid.sounds.map(({ at, sound }) => ({ tick: tick(at), bytes: text(7, sound) })),
      ...laid.words.map(({ at, word }) => ({ tick: tick(at), bytes: text(5, word) })),
    ];
    if (laid.events.some(({ kind }) => kind in BELL)) events.push({ tick: 0, bytes: [0xc0, TINKLE_BELL - 1] });
    for (const { at, kind } of laid.events) {
      const [key, loud] = BELL[kind] || DRUM[kind];
      const channel = kind in BELL ? 0 : 9;
      events.push({ tick: tick(at), bytes: [0x90 | channel, key, loud] });
      events.push({ tick: Math.min(end, tick(at) + SOUNDING), bytes: [0x80 | channel, key, 0] });
    }
    // sort() keeps what falls on one tick in its order, so that names come before the beats they name
    events.sort((a, b) => a.tick - b.tick);
    const track = [];
    let now = 0;
    for (const event of [...events, { tick: end, bytes: [0xff, 0x2f, 0] }]) {
      track.push(...variable(event.tick - now), ...event.bytes);
      now = event.tick;
    }
    return Uint8Array.from([
      ...ascii("MThd"), ...four(6), 0, 0, 0, 1, TICKS >> 8, TICKS & 255, ...ascii("MTrk"), ...four(track.length), ...track,
    ]);
  };

  const tick = (beats) => Math.round(beats * TICKS);
  const ascii = (word) => [...word].map((letter) => letter.charCodeAt(0));
  const four = (n) => [n >>> 24, (n >> 16) & 255, (n >> 8) & 255, n & 255];

  // The format knows no letters beyond ASCII: é becomes e.
  function text(kind, words) {
    const plain = words.normalize("NFD").replace(/[\u0300-\u036f]/g, "").replace(/[^ -~]/g, "-");
    return [0xff, kind, ...variable(plain.length), ...ascii(plain)];
  }

  // Seven bits a byte, every byte but the last marked.
  function variable(n) {
    const bytes = [n & 127];
    for (let left = n >> 7; left; left >>= 7) bytes.unshift((left & 127) | 128);
    return bytes;
  }
})();
