// When each beat falls, and what sounds and is said on it: sums only, no clock and no sound. Times in seconds,
// tempo in beats a minute. What sounds in a stretch is what its page says, in `heard`: pieces of
// { sound, from, to, strokes, loud, rate, says } in its counts, or in seconds where it is not counted. A page writes
// strokes that go on in even steps as [first, last, step], the step only where it is not 1; `pieces` reads that.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const COUNT_IN = 4;
  const MUTE = ["silence", "recording"]; // no sticks are heard before what begins in these
  // Seconds scheduled in advance. A hidden page's timers may run once a minute only.
  const AHEAD = { shown: 10, hidden: 150 };
  const NEAR = 1e-6;

  const ahead = (hidden) => (hidden ? AHEAD.hidden : AHEAD.shown);

  // `anchors` are { beat, time, tempo }, one for the start and one for each change of tempo.
  function timeOf(anchors, beat) {
    const from = anchors.findLast((one) => one.beat <= beat) || anchors[0];
    return from.time + ((beat - from.beat) * 60) / from.tempo;
  }

  function beatAt(anchors, time) {
    const from = anchors.findLast((one) => one.time <= time) || anchors[0];
    return from.beat + ((time - from.time) * from.tempo) / 60;
  }

  // The parts of a score: runs of counted stretches, and the spans between them.
  function program(stretches, phrase) {
    const parts = [];
    let run = null;
    stretches.forEach((stretch, index) => {
      const heard = stretch.heard || [];
      if (stretch.counts === undefined || stretch.counts === null) {
        parts.push({ run: false, stretch: index, heard });
        run = null;
        return;
      }
      if (!run) {
        const in_ = stretch.join && parts.length ? 0 : Math.min(COUNT_IN, phrase);
        run = { run: true, countIn: in_, beats: 0, pieces: [] };
        parts.push(run);
      }
      const long = Math.ceil(stretch.counts);
      if (long > 0) run.pieces.push({ stretch: index, start: run.beats, counts: long, heard });
      run.beats = Math.max(0, run.beats + long);
    });
    return parts.filter((part) => !part.run || part.pieces.length);
  }

  // What is danced and shown on beat `k` of a run, its count-in first; after the end it goes round.
  function beat(run, phrase, k) {
    if (k < run.countIn) {
      const { stretch, counts: of } = run.pieces[0];
      return { shown: phrase - run.countIn + k + 1, count: 0, of, stretch, lit: [], kind: "in", round: 0, sound: "", word: "", told: false };
    }
    const { whole, place, danced } = dancedOn(run, k);
    const { stretch, start, counts: of, heard } = danced.at(-1);
    const within = place - start;
    return {
      shown: (within % phrase) + 1,
      count: within + 1,
      of,
      stretch,
      lit: danced.map((piece) => ({ stretch: piece.stretch, count: place - piece.start + 1, piece: pieceAt(piece.heard, place - piece.start) })),
      kind: within % phrase ? "count" : "phrase",
      round: Math.floor(whole / run.beats),
      ...said(heard, within),
    };
  }

  function dancedOn(run, k) {
    const whole = k - run.countIn, place = whole % run.beats;
    return { whole, place, danced: run.pieces.filter((piece) => piece.start <= place && place < piece.start + piece.counts) };
  }

  // Which piece sounds at a place of a stretch; -1 where none does.
  const pieceAt = (heard, place) => heard.findIndex((one) => one.from <= place + NEAR && place + NEAR < one.to);

  // On a count: what sounds, the word that is said, and whether the piece has words of its own.
  function said(heard, place) {
    const { sound, says } = heard[pieceAt(heard, place)] || { sound: "" };
    const words = (says || []).filter(([from]) => from < place + 1 - NEAR && place - NEAR <= from);
    return { sound, word: words.map(([, word]) => word).join(" "), told: Boolean(says) };
  }

  // In a span: the piece that sounds at a second, and the last word said in it till then, with its place.
  function saidAt(heard, second) {
    const piece = pieceAt(heard, second), sound = piece < 0 ? "" : heard[piece].sound;
    const [from, word] = (piece < 0 ? [] : heard[piece].says || []).findLast(([place]) => place <= second) || [-1, ""];
    return { piece, sound, from, word };
  }

  // What is struck in a stretch from place `from` till `to`: { at, kind }, `each` of its units a minute.
  function struck(heard, from, to, each) {
    const found = [];
    for (const { sound, to: end, strokes, loud, rate } of heard) {
      for (const stroke of strokes) {
        if (stroke < from - NEAR || stroke >= to - NEAR) continue;
        const kind = loud.includes(stroke) ? `${sound}!` : sound;
        found.push({ at: stroke, kind });
        if (!rate) continue;
        const long = Math.min(1, end - stroke), quick = Math.round((rate * long * 60) / each);
        for (let n = 1; n < quick; n += 1) found.push({ at: stroke + (long * n) / quick, kind: sound });
      }
    }
    return found;
  }

  // What is struck on beat `k` of a run, at places in beats of the run. What two stretches that
  // overlap both strike is struck once, and loud if either is.
  function strokes(run, k, tempo) {
    if (k < run.countIn) return MUTE.includes(run.pieces[0].heard[0]?.sound) ? [] : [{ at: k, kind: "in" }];
    const { place, danced } = dancedOn(run, k);
    const found = [];
    for (const { start, heard } of danced) {
      const within = place - start;
      for (const one of struck(heard, within, within + 1, tempo)) {
        const here = k + (one.at - within);
        const same = found.find((other) => plain(other.kind) === plain(one.kind) && Math.abs(other.at - here) < NEAR);
        if (!same) found.push({ at: here, kind: one.kind });
        else if (same.kind.length < one.kind.length) same.kind = one.kind;
      }
    }
    return found.sort((a, b) => a.at - b.at);
  }

  const plain = (kind) => kind.replace("!", "");

  // What is struck in a span, at seconds from its start.
  const spanStrokes = (heard) => struck(heard, 0, Infinity, 60).sort((a, b) => a.at - b.at);

  // The score from end to end for a file, all at places in beats: strokes, words, and marks where
  // stretches and the pieces of what is heard start.
  function laid({ stretches, phrase, tempo }) {
    const events = [], words = [], marks = [], sounds = [];
    let now = 0;
    const put = (stretch, start, unit) => {
      marks.push({ at: start, stretch });
      for (const { from, sound, says } of stretches[stretch].heard || []) {
        sounds.push({ at: start + from * unit, stretch, sound });
        for (const [place, word] of says || []) words.push({ at: start + place * unit, word });
      }
    };
    for (const part of program(stretches, phrase)) {
      if (!part.run) {
        const second = tempo / 60;
        put(part.stretch, now, second);
        for (const { at: place, kind } of spanStrokes(part.heard)) events.push({ at: now + place * second, kind });
        now += stretches[part.stretch].lasts * second;
        continue;
      }
      const beats = part.countIn + part.beats;
      for (let k = 0; k < beats; k += 1) {
        for (const { at: place, kind } of strokes(part, k, tempo)) events.push({ at: now + place, kind });
      }
      for (const piece of part.pieces) put(piece.stretch, now + part.countIn + piece.start, 1);
      now += beats;
    }
    return { events, words, marks, sounds, beats: now, seconds: (now * 60) / tempo };
  }

  const run = ([first, last, step = 1]) => Array.from({ length: (last - first) / step + 1 }, (_, n) => first + n * step);
  const places = (told) => told.flatMap((one) => (Array.isArray(one) ? run(one) : one));
  counts.pieces = (told) => told.map((piece) => ({ ...piece, strokes: places(piece.strokes), loud: places(piece.loud) }));

  counts.beats = { ahead, timeOf, beatAt, program, beat, saidAt, strokes, spanStrokes, laid };
})();
