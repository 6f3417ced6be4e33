// Plays a score: what sounds in it, count-in, loops, spans that wait for Next. Knows neither the page nor its words.
//
//   const player = danceUnitBank.counts.player();
//   player.load({ tempo: 108, phrase: 8, loop: true, stretches: [{ name: "wave", counts: 8, heard: [ … ] }] });
//   player.onCount((at) => { … });    at = { shown, count, of, stretch, lit, kind, round, sound, word }
//   player.onHeard((is) => { … });    is = { stretch, piece, sound, word }, in a span
//   player.onState((is) => { … });    is = { state, stretch, trouble }
//   await player.play();              only from a click or a key: sound is refused otherwise
//   player.stop();  player.next();  player.tempo(96);  player.loop(false);  player.test();
//
// A stretch is { name, counts, heard } or, not counted, { name, least, most, lasts, heard } in seconds; counts under 0
// are an overlap: the next stretch starts that much early. `join: true` says that it leads from one section to
// the next. A count-in is heard at the start, and after a span unless a join follows it. Without `heard` nothing sounds.
// onCount, as each beat is heard: `shown` is the number to show, 1 to `phrase` (5, 6, 7, 8 in a count-in);
// `count` of `of` is the place in the stretch (0 in a count-in); `stretch` its index in `stretches`; `lit`
// every stretch that is being danced, as { stretch, count, piece } (two where they overlap; `piece` numbers what is
// heard); `kind` is "in", "phrase" (the first of a phrase) or "count"; `round` counts loops from 0; `sound` is what
// sounds there, `word` what is said, and `told` whether words are said there in place of numbers.
// onHeard, in a span, as each piece of what is heard begins and each word is said; `piece` is -1 after the last.
// onState: `state` is "stopped", "playing" or "waiting" (a span, till next()); `stretch` the one that it
// starts or waits in; `trouble` a plain sentence where the device gives no sound, else "".
// player.gone() tells how many counts have been heard since the last that was told, or seconds of a span.
// player.tempo() and player.loop() without a value tell what is set. tempo changes take hold on the next beat.
// Everything but the rules of playing comes from `device` (sound-device.js), which tests replace.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const EVERY = 200; // milliseconds between looks at what is to be scheduled
  const LEAD = 0.15; // seconds from the click to the first beat
  const SLOWEST = 40, FASTEST = 208; // the ends of a metronome's scale

  counts.player = (device = counts.device()) => {
    const when = counts.beats;
    const listeners = { count: [], state: [], heard: [] };
    let score = null, program = [], part = 0, looping = false;
    let state = "stopped", trouble = "";
    let anchors = [], beats = 0, due = 0, shown = -1, planned = [], span = [];
    let stopTimer = null, stopFrames = null, asked = 0;

    const tell = (kind, event) => { for (const listener of listeners[kind]) listener(event); };
    const tellState = () => tell("state", { state, stretch: state === "stopped" ? null : here(), trouble });
    const here = () => (program[part].run ? program[part].pieces[0].stretch : program[part].stretch);
    const run = () => program[part];

    function load(wanted) {
      stop();
      score = { ...wanted };
      program = when.program(score.stretches, score.phrase);
      looping = Boolean(wanted.loop);
    }

    async function play() {
      if (!score || state !== "stopped") return;
      const mine = (asked += 1);
      const opened = await device.open();
      if (mine !== asked) return;
      trouble = opened;
      part = 0;
      stopTimer = device.every(EVERY, look);
      stopFrames = device.frames(show);
      begin();
    }

    function begin() {
      if (part >= program.length) { stop(); return; }
      state = run().run ? "playing" : "waiting";
      // a span is counted in seconds, sixty a minute, whatever the tempo
      anchors = [{ beat: 0, time: device.now() + LEAD, tempo: run().run ? score.tempo : 60 }];
      beats = !run().run || (whole() && looping) ? Infinity : run().countIn + run().beats;
      span = run().run ? [] : when.spanStrokes(run().heard);
      due = 0; shown = -1; planned = [];
      tellState();
      look();
    }

    // only what has no uncounted span can go round by itself
    const whole = () => program.length === 1;

    // schedules every stroke up to the horizon; its time is a product, so nothing drifts
    function look() {
      if (state === "stopped") return;
      const until = device.now() + when.ahead(device.hidden());
      if (state === "playing") {
        for (; due < beats && when.timeOf(anchors, due) <= until; due += 1) {
          for (const one of when.strokes(run(), due, tempoAt(due))) plan(one);
        }
      } else {
        for (; due < span.length && when.timeOf(anchors, span[due].at) <= until; due += 1) plan(span[due]);
      }
      const past = when.beatAt(anchors, device.now()) - 2;
      planned = planned.filter((one) => one.at > past);
      show();
    }

    const plan = ({ at, kind }) => planned.push({ at, cancel: device.sound(kind, when.timeOf(anchors, at)) });
    const tempoAt = (beat) => (anchors.findLast((one) => one.beat <= beat) || anchors[0]).tempo;

    function show() {
      const now = when.beatAt(anchors, device.heard()) + 1e-6;
      if (state === "waiting") { showSpan(now); return; }
      if (state !== "playing") return;
      const beat = Math.floor(now);
      if (beat >= beats) { part += 1; begin(); return; }
      if (beat < 0 || beat === shown) return;
      shown = beat;
      tell("count", when.beat(run(), score.phrase, beat));
    }

    function showSpan(second) {
      if (second < 0) return;
      const at = when.saidAt(run().heard, second), now = `${at.piece} ${at.from}`;
      if (now === shown) return;
      shown = now;
      tell("heard", { stretch: run().stretch, piece: at.piece, sound: at.sound, word: at.word });
    }

    // counts heard since the last one told, or seconds of a span: a picture between counts follows the sound by it
    function gone() {
      if (state === "stopped") return 0;
      return Math.max(0, when.beatAt(anchors, device.heard()) - (state === "playing" ? Math.max(0, shown) : 0));
    }

    function cancelFrom(beat) {
      for (const one of planned) if (one.at >= beat) one.cancel();
      planned = planned.filter((one) => one.at < beat);
      due = Math.min(due, beat);
    }

    function stop() {
      asked += 1;
      if (state === "stopped") return;
      cancelFrom(0);
      stopTimer(); stopFrames();
      state = "stopped";
      tellState();
    }

    function next() {
      if (state !== "waiting") return;
      cancelFrom(0);
      part += 1;
      begin();
    }

    function tempo(wanted) {
      if (wanted === undefined) return score ? score.tempo : null;
      score.tempo = Math.min(FASTEST, Math.max(SLOWEST, Math.round(wanted)));
      if (state === "playing") {
        const beat = Math.max(0, Math.ceil(when.beatAt(anchors, device.now() + 0.05)));
        anchors.push({ beat, time: when.timeOf(anchors, beat), tempo: score.tempo });
        cancelFrom(beat);
        look();
      }
      return score.tempo;
    }

    function loop(wanted) {
      if (wanted === undefined) return looping;
      looping = Boolean(wanted);
      if (state === "playing" && whole()) {
        const { countIn, beats: long } = run();
        const now = Math.max(0, when.beatAt(anchors, device.heard()) - countIn);
        beats = looping ? Infinity : countIn + long * (Math.floor(now / long) + 1);
        cancelFrom(beats);
        look();
      }
      return looping;
    }

    // a clock is never changed for another while it counts
    async function test() {
      if (state === "stopped") trouble = await device.open();
      if (trouble) { tellState(); return; }
      device.sound("beat!", device.now() + 0.05);
      device.sound("beat", device.now() + 0.55);
    }

    device.onHidden(look);
    device.onLost((sentence) => { if (state !== "stopped") { trouble = sentence; stop(); } });

    return {
      load, play, stop, next, tempo, loop, test,
      gone,
      onCount: (listener) => listeners.count.push(listener),
      onHeard: (listener) => listeners.heard.push(listener),
      onState: (listener) => listeners.state.push(listener),
      state: () => state,
    };
  };
})();
