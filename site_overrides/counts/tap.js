// The tempo of taps, and what it means for a dance. Sums and sentences only.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext, ngettext } = bank;
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
    const beat = Math.round(tapped);
    for (const [times, said] of [[2, TWICE], [0.5, EVERY_OTHER]]) {
      const other = Math.round(tapped * times);
      if (!near(tapped, dance.tempo) && near(other, dance.tempo)) {
        return { tempo: other, words: said({ beat, other, tempo: dance.tempo }) };
      }
    }
    return { tempo: beat, words: asTapped(beat, dance) };
  }

  const TWICE = (places) =>
    gettext("Your track has {beat} beats a minute as you tapped it. Clap twice as often and it is {other}, close to the dance’s {tempo}. It suits.", places);
  const EVERY_OTHER = (places) =>
    gettext("Your track has {beat} beats a minute as you tapped it. Clap every other beat and it is {other}, close to the dance’s {tempo}. It suits.", places);

  function asTapped(beat, { tempo, slowest, fastest, age }) {
    if (beat < slowest) {
      return gettext("Your track has {beat} beats a minute. That is too slow to keep at age {age}: {slowest} to {fastest} can be kept.", { beat, age, slowest, fastest });
    }
    if (beat > fastest) {
      return gettext("Your track has {beat} beats a minute. That is too fast to keep at age {age}: {slowest} to {fastest} can be kept.", { beat, age, slowest, fastest });
    }
    if (near(beat, tempo)) return gettext("Your track has {beat} beats a minute. It suits: the dance is written for {tempo}.", { beat, tempo });
    return beat < tempo
      ? gettext("Your track has {beat} beats a minute. It can be kept at age {age}, but it is slower than the {tempo} the dance is written for. Try one motif at this speed first.", { beat, age, tempo })
      : gettext("Your track has {beat} beats a minute. It can be kept at age {age}, but it is faster than the {tempo} the dance is written for. Try one motif at this speed first.", { beat, age, tempo });
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
    const takes = gettext("The dance takes {time} at {tempo} beats a minute.", { time: range(least, most), tempo: at });
    return `${takes} ${enough(track, least, most)}`;
  }

  function enough(track, least, most) {
    if (track >= most) return gettext("Your track is long enough, with {time} over.", { time: clock(track - most) });
    if (track >= least) return gettext("Your track is long enough only if the parts without counts are kept short.");
    return gettext("Your track is {time} too short: play it again from the start, or choose a longer one.", { time: clock(least - track) });
  }

  function range(least, most) {
    const [from, to] = [clock(least), clock(most)];
    return from === to ? from : gettext("{least} to {most}", { least: from, most: to });
  }

  function clock(length) {
    const all = Math.round(length), minutes = Math.floor(all / 60), rest = all % 60;
    const words = minutes ? [ngettext("{number} minute", "{number} minutes", minutes)] : [];
    if (rest || !minutes) words.push(ngettext("{number} second", "{number} seconds", rest));
    return words.join(" ");
  }

  counts.tap = { LEAST, tempo, seconds, speed, needed, long };
})();
