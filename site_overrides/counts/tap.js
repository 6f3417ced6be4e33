// The tempo of taps, and what it means for a dance. Sums and sentences only.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const LEAST = 8; // taps
  const PAUSE = 3; // seconds without a tap begin a new try
  const NEAR = 0.1; // common practice, no source: within a tenth, moves need no practising anew

  // The beats a minute of tap times in seconds; null where there are too few. A missed tap or one too
  // many does no harm: beats are numbered by the usual gap, and the middle of all slopes between taps two
  // or more apart is taken (Theil 1950; Sen 1968).
  function tempo(times) {
    const since = times.findLastIndex((time, n) => n > 0 && time - times[n - 1] > PAUSE);
    const all = times.slice(Math.max(0, since));
    if (all.length < LEAST) return null;
    const usual = middle(all.slice(1).map((time, n) => time - all[n]));
    const kept = [];
    for (const time of all) {
      const last = kept.at(-1);
      const steps = last ? Math.round((time - last.time) / usual) : 0;
      if (!last || steps > 0) kept.push({ time, beat: last ? last.beat + steps : 0 });
    }
    const slopes = kept.flatMap((a, n) => kept.slice(n + 2).map((b) => (b.time - a.time) / (b.beat - a.beat)));
    return slopes.length ? 60 / middle(slopes) : null;
  }

  function middle(numbers) {
    const sorted = [...numbers].sort((a, b) => a - b), half = sorted.length >> 1;
    return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  // "3:10", or "190" seconds, in seconds; null where it is neither.
  function seconds(words) {
    const found = /^\s*(?:(\d{1,2})\s*[:.]\s*([0-5]\d)|(\d{1,4}))\s*$/.exec(words);
    if (!found) return null;
    const [, minutes, rest, plain] = found;
    return plain === undefined ? 60 * Number(minutes) + Number(rest) : Number(plain);
  }

  // Whether the speed suits. `dance` is { tempo, slowest, fastest, age }.
  function speed(tapped, dance) {
    const beat = Math.round(tapped), is = `Your track has ${beat} beats a minute`;
    for (const [times, how] of [[2, "Clap twice as often"], [0.5, "Clap every other beat"]]) {
      const other = Math.round(tapped * times);
      if (!near(tapped, dance.tempo) && near(other, dance.tempo)) {
        return { tempo: other, words: `${is} as you tapped it. ${how} and it is ${other}, close to the dance’s ${dance.tempo}. It suits.` };
      }
    }
    if (beat < dance.slowest || beat > dance.fastest) {
      const kind = beat < dance.slowest ? "slow" : "fast";
      return { tempo: beat, words: `${is}. That is too ${kind} to keep at age ${dance.age}: ${dance.slowest} to ${dance.fastest} can be kept.` };
    }
    if (near(beat, dance.tempo)) return { tempo: beat, words: `${is}. It suits: the dance is written for ${dance.tempo}.` };
    const kind = beat < dance.tempo ? "slower" : "faster";
    return { tempo: beat, words: `${is}. It can be kept at age ${dance.age}, but it is ${kind} than the ${dance.tempo} the dance is written for. Try one motif at this speed first.` };
  }

  const near = (a, b) => Math.abs(a - b) <= NEAR * b;

  // How long the whole dance is at a tempo, in seconds, from its counts and its spans.
  function needed(dance, at) {
    const counted = (dance.counts * 60) / at;
    return { least: counted + dance.least, most: counted + dance.most };
  }

  // Whether a track of `track` seconds is long enough.
  function long(track, dance, at) {
    const { least, most } = needed(dance, at);
    const takes = `The dance takes ${range(least, most)} at ${at} beats a minute.`;
    if (track >= most) return `${takes} Your track is long enough, with ${clock(track - most)} over.`;
    if (track >= least) return `${takes} Your track is long enough only if the parts without counts are kept short.`;
    return `${takes} Your track is ${clock(least - track)} too short: play it again from the start, or choose a longer one.`;
  }

  function range(least, most) {
    const [from, to] = [clock(least), clock(most)];
    return from === to ? from : `${from} to ${to}`;
  }

  function clock(length) {
    const all = Math.round(length), minutes = Math.floor(all / 60), rest = all % 60;
    const said = (n, word) => `${n} ${word}${n === 1 ? "" : "s"}`;
    if (!minutes) return said(rest, "second");
    return rest ? `${said(minutes, "minute")} ${said(rest, "second")}` : said(minutes, "minute");
  }

  counts.tap = { LEAST, tempo, seconds, speed, needed, long };
})();
