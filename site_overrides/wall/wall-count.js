// The count on the wall: a big number, started and stopped by a press. Without script the words say how many.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const { gettext } = bank;
  const START = gettext("Start counts"), STOP = gettext("Stop counts");

  // One player for the whole wall. `said` takes what the device has to say; `reached` the count that is heard, from 0,
  // and null where nothing is danced: in a count-in, and when the counting stops.
  hall.wallCount = (said, reached = () => {}) => {
    let player = null, now = null;

    function take(place) {
      const { counts, tempo, phrase, heard } = place.dataset;
      const button = document.createElement("button");
      const number = document.createElement("span"), words = document.createElement("span");
      const word = document.createElement("span");
      const shown = { place, button, number, word, words, written: place.textContent.trim() };
      button.type = "button";
      button.className = "count-go";
      number.className = "number";
      number.setAttribute("aria-hidden", "true");
      word.className = "count-said";
      word.setAttribute("aria-hidden", "true");
      words.className = "count-words";
      button.append(number, word, words);
      button.addEventListener("click", () => toggle(shown));
      shown.score = {
        tempo: Number(tempo), phrase: Number(phrase), loop: true,
        stretches: [{ name: shown.written, counts: Number(counts), heard: heard ? bank.counts.pieces(JSON.parse(heard)) : [] }],
      };
      place.replaceChildren(button);
      still(shown);
      return shown;
    }

    function still(shown) {
      shown.number.textContent = String(Math.ceil(shown.score.stretches[0].counts));
      shown.word.textContent = "";
      shown.words.textContent = START;
      delete shown.place.dataset.playing;
      reached(null);
    }

    function toggle(shown) {
      if (now === shown) { stop(); return; }
      stop();
      bank.stopMusic?.();
      player ||= ready();
      now = shown;
      player.load(shown.score);
      shown.words.textContent = STOP;
      shown.number.textContent = "…";
      shown.place.dataset.playing = "";
      player.play();
    }

    function ready() {
      const made = bank.counts.player();
      made.onCount((at) => {
        if (!now) return;
        now.number.textContent = String(at.shown);
        now.word.textContent = at.word === String(at.shown) ? "" : at.word;
        now.place.dataset.kind = at.kind;
        reached(at.kind === "in" ? null : at.count - 1);
      });
      made.onState(({ state, trouble }) => {
        said(trouble);
        if (state === "stopped" && now) { const was = now; now = null; still(was); }
      });
      return made;
    }

    function stop() {
      if (!now) return;
      const was = now;
      now = null;
      player.stop();
      still(was);
    }

    hall.stopCount = stop;
    return { take, toggle, stop, counting: () => now !== null };
  };
})();
