// The device under the player: its sound, its clocks, and whether the page is in sight.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const counts = (bank.counts ||= {});
  const PATIENCE = 1500; // milliseconds that a sound may take to start
  const REFUSED = gettext("This device gives no sound here, so the numbers count in silence. Clap or drum with them.");
  const LOST = gettext("Something else took the sound, so the counting stopped. Press start again.");

  counts.device = () => {
    let context = null, strokes = null, lost = () => {};
    const silentNow = () => performance.now() / 1000;

    // Gives "" where there is sound, or a sentence for the teacher. Call it from a click or a key.
    async function open() {
      try {
        const tried = context || new AudioContext();
        if (tried.state !== "running") await Promise.race([tried.resume(), wait(PATIENCE)]);
        if (tried.state !== "running") throw new Error(tried.state);
        context = tried;
      } catch {
        context = null;
        return REFUSED;
      }
      context.onstatechange = () => { if (context && context.state !== "running") lost(LOST); };
      strokes ||= new Map(counts.sounds.kinds().map((kind) => [kind, buffer(context, kind)]));
      return "";
    }

    function sound(kind, time) {
      if (!context) return () => {};
      const source = context.createBufferSource();
      source.buffer = strokes.get(kind);
      source.connect(context.destination);
      source.start(Math.max(0, time));
      return () => source.stop();
    }

    return {
      open,
      sound,
      now: () => (context ? context.currentTime : silentNow()),
      heard: () => (context ? counts.heardTime(context, performance.now()) : silentNow()),
      hidden: () => document.hidden,
      every: (milliseconds, look) => { const id = setInterval(look, milliseconds); return () => clearInterval(id); },
      frames: (draw) => {
        let going = true;
        const frame = () => { if (going) { draw(); requestAnimationFrame(frame); } };
        requestAnimationFrame(frame);
        return () => { going = false; };
      },
      onHidden: (look) => document.addEventListener("visibilitychange", look),
      onLost: (listener) => { lost = listener; },
    };
  };

  function buffer(context, kind) {
    const samples = counts.sounds.samples(kind, context.sampleRate);
    const made = context.createBuffer(1, samples.length, context.sampleRate);
    made.copyToChannel(samples, 0);
    return made;
  }

  const wait = (milliseconds) => new Promise((done) => { setTimeout(done, milliseconds); });
})();
