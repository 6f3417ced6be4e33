// When each beat falls and how it sounds: sums only, no clock and no sound. Times in seconds, tempo in beats a minute.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const COUNT_IN = 4;
  // Seconds scheduled in advance. A hidden page's timers may run once a minute only.
  const AHEAD = { shown: 10, hidden: 150 };

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
      if (stretch.counts === undefined || stretch.counts === null) {
        parts.push({ run: false, stretch: index });
        run = null;
        return;
      }
      if (!run) {
        const in_ = stretch.join && parts.length ? 0 : Math.min(COUNT_IN, phrase);
        run = { run: true, countIn: in_, beats: 0, pieces: [] };
        parts.push(run);
      }
      const long = Math.ceil(stretch.counts);
      if (long > 0) run.pieces.push({ stretch: index, start: run.beats, counts: long });
      run.beats = Math.max(0, run.beats + long);
    });
    return parts.filter((part) => !part.run || part.pieces.length);
  }

  // What is danced and shown on beat `k` of a run, its count-in first; after the end it goes round.
  function beat(run, phrase, k) {
    if (k < run.countIn) {
      const { stretch, counts: of } = run.pieces[0];
      return { shown: phrase - run.countIn + k + 1, count: 0, of, stretch, lit: [], kind: "in", round: 0 };
    }
    const whole = k - run.countIn, place = whole % run.beats;
    const danced = run.pieces.filter((piece) => piece.start <= place && place < piece.start + piece.counts);
    const { stretch, start, counts: of } = danced.at(-1);
    const within = place - start;
    return {
      shown: (within % phrase) + 1,
      count: within + 1,
      of,
      stretch,
      lit: danced.map((piece) => ({ stretch: piece.stretch, count: place - piece.start + 1 })),
      kind: within % phrase ? "count" : "phrase",
      round: Math.floor(whole / run.beats),
    };
  }

  // How long a span is left silent in a file: the middle of its least and most, in whole seconds.
  const silence = (stretch) => Math.round((stretch.least + stretch.most) / 2);

  // The score from end to end for a file: beats at places in beats, marks where stretches start.
  function laid({ stretches, phrase, tempo }) {
    const events = [], marks = [];
    let at = 0;
    for (const part of program(stretches, phrase)) {
      if (!part.run) {
        marks.push({ at, stretch: part.stretch });
        at += (silence(stretches[part.stretch]) * tempo) / 60;
        continue;
      }
      const beats = part.countIn + part.beats;
      for (let k = 0; k < beats; k += 1) events.push({ at: at + k, kind: beat(part, phrase, k).kind });
      for (const piece of part.pieces) marks.push({ at: at + part.countIn + piece.start, stretch: piece.stretch });
      at += beats;
    }
    return { events, marks, beats: at, seconds: (at * 60) / tempo };
  }

  counts.beats = { ahead, timeOf, beatAt, program, beat, silence, laid };
})();
