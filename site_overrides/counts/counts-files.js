// Saves what is chosen as a sound file and as a MIDI file, made on the page itself.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const counts = (bank.counts ||= {});

  for (const root of document.querySelectorAll('[data-part="counts-save"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("counts-save:", error); }
  }

  function start(root) {
    const said = root.querySelector("[data-saved]");
    const kinds = [["[data-wav]", "wav", "audio/wav"], ["[data-midi]", "mid", "audio/midi"]];
    for (const [button, ending, type] of kinds) {
      root.querySelector(button).addEventListener("click", () => {
        const score = counts.chosen.score();
        const bytes = ending === "wav" ? counts.wav(score) : counts.midi(score);
        const name = `${slug(score.file)}-${score.tempo}.${ending}`;
        save(new Blob([bytes], { type }), name);
        said.textContent = [gettext("Saved as {name}.", { name }), ...uncounted(score), ...notPlayed(score)].join(" ");
      });
    }
    root.hidden = false;
  }

  function save(blob, name) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    // the browser has to have read it before it is let go
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }

  const slug = (words) => words.toLowerCase().replace(/[^a-z0-9]+/g, "-");

  function uncounted({ stretches }) {
    const spans = stretches.filter((one) => one.counts === undefined);
    return spans.map(({ short, lasts, heard }) => {
      const silent = heard.every(({ strokes }) => !strokes.length);
      return silent
        ? gettext("In it, {seconds} seconds are silent for {part}.", { seconds: lasts, part: short })
        : gettext("In it, {part} lasts {seconds} seconds.", { seconds: lasts, part: short });
    });
  }

  // what no drum can be for: a voice, and the school's own track
  const LEFT = {
    voice: (parts) => gettext("No drum, for your voice: {parts}.", { parts }),
    recording: (parts) => gettext("No drum, for your own recording: {parts}.", { parts }),
  };

  function notPlayed({ stretches }) {
    return Object.entries(LEFT).flatMap(([kind, said]) => {
      const left = stretches.filter(({ heard }) => heard.some(({ sound }) => sound === kind)).map(({ short }) => short);
      return left.length ? [said([...new Set(left)].join(", "))] : [];
    });
  }
})();
