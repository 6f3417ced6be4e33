// The player on the page of counts: what is chosen, the big number, who dances what lit as it goes.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const counts = (bank.counts ||= {});
  const STEP = 4; // beats a minute, for slower and faster
  const OWN_KEYS = "input:not([type=checkbox]), select, textarea, button, summary, a[href], label";

  for (const root of document.querySelectorAll('[data-part="counts"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("counts:", error); }
  }

  function start(root) {
    const part = (name) => root.querySelector(`[data-${name}]`);
    const [big, now, whoNow, then, go, next] = ["big", "now", "who-now", "then", "go", "next"].map(part);
    const [word, sounding] = ["word", "sounding"].map(part);
    const [said, loop, shownTempo, usual] = ["said", "loop", "tempo-shown", "usual"].map(part);
    const choice = root.querySelector("select");
    const written = Number(root.dataset.tempo), phrase = Number(root.dataset.phrase);
    const player = counts.player();
    const speak = voice(part("voice-line"), part("voice"));
    let elements = [], tempo = written;

    // the score of what is chosen, at the speed chosen
    function score() {
      const { title, unit } = root.dataset;
      const named = choice.selectedOptions[0].textContent.trim();
      const stretches = elements.map(stretch);
      return { tempo, phrase, loop: loop.checked, stretches, title: `${title}: ${named}`, file: `${unit} ${named}` };
    }

    function choose() {
      const chosen = document.getElementById(choice.value);
      elements = chosen.matches("[data-stretch]") ? [chosen] : [...document.querySelectorAll(".whole > [data-stretch]")];
      const spans = elements.some((one) => !one.dataset.counts);
      loop.closest("label").hidden = spans;
      loop.checked = elements.length === 1;
      ready();
    }

    function ready() {
      player.load(score());
      still();
    }

    function still() {
      big.textContent = "–";
      now.textContent = gettext("Press start, or the space bar.");
      whoNow.replaceChildren();
      hears("", "");
      then.textContent = elements.length > 1 ? gettext("First: {name}", { name: nameOf(elements[0]) }) : "";
      light([]);
    }

    function setTempo(wanted) {
      tempo = player.tempo(wanted);
      shownTempo.textContent = gettext("{tempo} beats a minute", { tempo });
      usual.hidden = tempo === written;
    }

    function toggle() {
      if (player.state() !== "stopped") { player.stop(); return; }
      said.textContent = "";
      player.play();
    }

    player.onState(({ state, stretch: at, trouble }) => {
      go.textContent = state === "stopped" ? gettext("Start") : gettext("Stop");
      next.hidden = state !== "waiting";
      if (said.textContent !== trouble) said.textContent = trouble;
      if (state === "stopped") { still(); speak.stop(); return; }
      if (state !== "waiting") return;
      const element = elements[at];
      big.textContent = "…";
      now.textContent = shortName(element);
      const { least, most } = element.dataset;
      whoNow.replaceChildren(
        line(gettext("Not counted: {seconds} seconds.", { seconds: least === most ? least : gettext("{least} to {most}", { least, most }) })),
        line(gettext("Ends on: {cue} Then press next.", { cue: text(element, "cue") })),
      );
      hears("", "");
      then.textContent = after(at);
      light([{ element, rows: [] }]);
      next.focus();
    });

    player.onCount((at) => {
      big.textContent = at.shown;
      speak.say(at.told ? at.word : at.shown);
      const lit = at.lit.map(({ stretch: n, count, piece }) => ({ element: elements[n], rows: rowsAt(elements[n], count), count, piece }));
      const section = shortName(elements[at.stretch]);
      now.textContent = at.kind === "in"
        ? gettext("{section}, counting in", { section })
        : gettext("{section}, count {count} of {many}", { section, count: at.count, many: at.of });
      const lines = lit.flatMap(({ element, rows }) => ("join" in element.dataset ? [nameOf(element)] : rows.filter(isDanced).map(rowSaid)));
      if (lines.join() !== [...whoNow.children].map((one) => one.textContent).join()) whoNow.replaceChildren(...lines.map(line));
      const here = lit.at(-1);
      hears(here ? pieceOf(here.element, here.piece) : "", at.word);
      then.textContent = after(at.stretch);
      light(lit);
    });

    player.onHeard(({ stretch: at, piece, word: saying }) => {
      const element = elements[at];
      hears(pieceOf(element, piece), saying);
      speak.say(saying);
      light([{ element, rows: [], piece }]);
    });

    // what sounds now, and the word of this count
    function hears(sound, saying) {
      sounding.textContent = sound ? gettext("Heard: {sound}", { sound }) : "";
      word.textContent = saying;
      word.hidden = !saying || saying === big.textContent;
    }

    function after(index) {
      if (index + 1 < elements.length) return gettext("Then: {name}", { name: nameOf(elements[index + 1]) });
      return elements.length > 1 ? gettext("Then the end.") : "";
    }

    choice.addEventListener("change", choose);
    loop.addEventListener("change", () => player.loop(loop.checked));
    go.addEventListener("click", toggle);
    next.addEventListener("click", () => { go.focus(); player.next(); });
    part("test").addEventListener("click", () => player.test());
    part("slower").addEventListener("click", () => setTempo(tempo - STEP));
    part("faster").addEventListener("click", () => setTempo(tempo + STEP));
    usual.addEventListener("click", () => { setTempo(written); part("slower").focus(); });
    document.addEventListener("keydown", (event) => {
      if (event.key !== " " || event.repeat || event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.target.closest(OWN_KEYS) || event.target.matches("input")) return;
      event.preventDefault();
      if (player.state() === "waiting") player.next(); else toggle();
    });

    counts.chosen = { score, tempo: setTempo };
    root.hidden = false;
    for (const plain of document.querySelectorAll('[data-part="counts-plain"]')) plain.hidden = true;
    choose();
  }

  function stretch(element) {
    const { counts: long, least, most, lasts, join } = element.dataset;
    const name = nameOf(element), short = shortName(element);
    const heard = element.dataset.heard ? counts.pieces(JSON.parse(element.dataset.heard)) : [];
    return long === undefined
      ? { name, short, least: Number(least), most: Number(most), lasts: Number(lasts), heard }
      : { name, short, counts: Number(long), join: join !== undefined, heard };
  }

  function nameOf(element) {
    const letter = letterOf(element), name = text(element, "name");
    return letter ? gettext("Section {letter}: {name}", { letter, name }) : name.charAt(0).toUpperCase() + name.slice(1);
  }

  function shortName(element) {
    const letter = letterOf(element);
    if (letter) return gettext("Section {letter}", { letter });
    return "join" in element.dataset ? gettext("On the way") : nameOf(element);
  }

  function letterOf(element) {
    const found = element.querySelector(".letter");
    return found ? found.textContent.trim() : "";
  }

  function text(element, name) {
    const found = element.querySelector(`[data-${name}]`);
    return found ? found.textContent.trim() : "";
  }

  const pieceOf = (element, piece) => {
    const found = element.querySelector(`[data-piece~="${piece}"]`);
    return found ? found.textContent.trim() : "";
  };

  const isDanced = (row) => row.querySelector("[data-what]");

  // a row is danced on a count that any part of it falls in
  function rowsAt(element, count) {
    return [...element.querySelectorAll("tr[data-from]")].filter(
      ({ dataset }) => Number(dataset.from) < count && Number(dataset.to) > count - 1,
    );
  }

  function rowSaid(row) {
    const who = text(row, "who");
    return who ? `${who}: ${text(row, "what")}` : text(row, "what");
  }

  function line(words) {
    const item = document.createElement("li");
    item.textContent = words;
    return item;
  }

  function light(lit) {
    const wanted = new Set(lit.flatMap(({ element, rows, count, piece }) => [
      element,
      ...rows,
      ...element.querySelectorAll(`[data-piece~="${piece}"]`),
      ...rows.flatMap((row) => [...row.querySelectorAll(`[data-on="${count}"]`)]),
    ]));
    for (const old of document.querySelectorAll("[data-lit]")) if (!wanted.has(old)) delete old.dataset.lit;
    for (const one of wanted) one.dataset.lit = "";
  }

  // Spoken numbers, only by a voice that is on the device itself.
  function voice(place, box) {
    const speech = window.speechSynthesis;
    if (!speech) return { say() {}, stop() {} };
    const language = (document.documentElement.lang || "en").slice(0, 2);
    const own = () => speech.getVoices().find((one) => one.localService && one.lang.startsWith(language));
    const offer = () => { place.hidden = !own(); };
    offer();
    speech.addEventListener("voiceschanged", offer);
    return {
      say(number) {
        if (place.hidden || !box.checked || number === "") return;
        const words = new SpeechSynthesisUtterance(String(number));
        words.voice = own();
        words.rate = 1.4;
        speech.cancel();
        speech.speak(words);
      },
      stop: () => speech.cancel(),
    };
  }
})();
