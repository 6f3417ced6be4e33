// Tap along to a track: its tempo, and whether its speed and its length suit the dance.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const counts = (bank.counts ||= {});

  for (const root of document.querySelectorAll('[data-part="counts-tap"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("counts-tap:", error); }
  }

  function start(root) {
    const { tap } = counts;
    const part = (name) => root.querySelector(`[data-${name}]`);
    const [here, again, track, meaning, use] = ["tap", "again", "track", "meaning", "use"].map(part);
    const number = (name, otherwise) => (name in root.dataset ? Number(root.dataset[name]) : otherwise);
    const dance = {
      tempo: number("tempo"), counts: number("counts"), least: number("least"), most: number("most"),
      slowest: number("slowest", 0), fastest: number("fastest", Infinity), age: number("age"),
    };
    let times = [], tempo = null;

    function taken(event) {
      times.push(event.timeStamp / 1000);
      show();
    }

    function show() {
      const found = tap.tempo(times);
      const left = tap.LEAST - times.length;
      use.hidden = found === null;
      if (found === null) {
        say(times.length ? [left > 0 ? gettext("{number} tapped. {left} more.", { number: times.length, left }) : gettext("Go on tapping.")] : []);
        return;
      }
      const { tempo: beat, words } = tap.speed(found, dance);
      tempo = beat;
      const lines = [words];
      if (track.value.trim()) {
        const seconds = tap.seconds(track.value);
        lines.push(seconds === null ? gettext("Write the track’s length as minutes and seconds, such as 2:45.") : tap.long(seconds, dance, beat));
      }
      say(lines);
    }

    function say(lines) {
      meaning.replaceChildren(...lines.map((words) => {
        const line = document.createElement("p");
        line.textContent = words;
        return line;
      }));
    }

    // A beat is where a finger or a key comes down. The click that follows is that same tap; a click
    // with neither before it comes from what presses buttons by itself, such as a switch or a voice.
    let pressed = false;
    const down = (event) => { pressed = true; taken(event); };
    here.addEventListener("pointerdown", down);
    here.addEventListener("keydown", (event) => {
      if ((event.key === " " || event.key === "Enter") && !event.repeat) down(event);
    });
    here.addEventListener("click", (event) => {
      if (!pressed) taken(event);
      pressed = false;
    });
    again.addEventListener("click", () => { times = []; tempo = null; show(); here.focus(); });
    track.addEventListener("input", show);
    use.addEventListener("click", () => {
      counts.chosen.tempo(tempo);
      document.getElementById("at-play").scrollIntoView();
    });
    root.hidden = false;
  }
})();
