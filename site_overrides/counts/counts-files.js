// Saves what is chosen as a sound file and as a MIDI file, made on the page itself.
(() => {
  const bank = (window.danceUnitBank ||= {});
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
        said.textContent = `Saved as ${name}.${silences(score)}`;
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

  function silences({ stretches }) {
    return stretches
      .filter((one) => one.counts === undefined)
      .map((one) => ` In it, ${counts.beats.silence(one)} seconds are silent for ${one.short}.`)
      .join("");
  }
})();
