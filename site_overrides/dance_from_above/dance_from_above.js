// The dance from above: plays the whole class to the sound, or goes on count by count, phrase by phrase.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const counts = (bank.counts ||= {});
  const dance = (bank.dance ||= {});
  const SLOWEST = 0.5, STEP = 0.1; // of the dance's own tempo
  const OWN_KEYS = "input:not([type=checkbox]), select, textarea, button, summary, a[href], label";

  for (const root of document.querySelectorAll('[data-part="dance"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("dance:", error); }
  }

  function start(root) {
    const { dance: told, danceSmall } = root.dataset;
    const data = JSON.parse(danceSmall ? bank.unsqueezed(danceSmall) : told);
    const { tempo, phrase, parts, sets } = data;
    for (const one of parts) if (one.heard) one.heard = counts.pieces(one.heard);
    const part = (name) => root.querySelector(`[data-${name}]`);
    const [big, now, whoNow, said, go, next] = ["big", "now", "who-now", "said", "go", "next"].map(part);
    const [choice, role, shownWays, speed, word] = ["choice", "role", "ways", "speed", "word"].map(part);
    // the class and the hall of the day: everybody's ways, and the floor they are drawn on
    let paths = null, stage = null;
    const mover = dance.mover(part("figure"), data.bodies);
    const still = matchMedia("(prefers-reduced-motion: reduce)");
    const player = tempo ? counts.player() : null;
    // where the page stands: a part, and counts (or seconds) into it
    let at = { part: 0, into: 0 };
    let rate = 1, offset = 0, first = 0, playing = null, frames = 0;

    const chosen = () => {
      const value = choice.value;
      return value === "whole" ? parts.map((_, n) => n) : [Number(value)];
    };
    const length = (n) => paths.parts[n].lasts;
    const momentOf = ({ part: n, into }) => paths.parts[n].begins + into;

    // draws a place of the dance; `lit` says how much of the count that begins there has gone by
    function draw(place, gone = 0) {
      const into = Math.min(length(place.part), place.into + gone);
      stage.show(momentOf({ part: place.part, into }));
      figure(moveAt(place.part, into), into);
    }

    // as it plays, the body in the move; at rest where the move ends, and pale where it starts
    function figure(move, into) {
      const moving = playing && !still.matches;
      if (!move || !data.told[move.figure]) { mover.clear(); return; }
      const gone = (into - move.from) / (move.to - move.from);
      mover.show(move.figure, moving ? Math.min(1, gone) : null, move.label, data.told[move.figure]);
    }

    function alone() { return role.value === "" ? -1 : Number(role.value); }

    // what the role that is looked at dances then; without a role, whoever dances first
    function moveAt(n, into) {
      const spans = (parts[n].danced || []).filter(([from, to]) => from <= into && into < to);
      const all = alone() < 0 || (parts[n].rows || []).length < 2; // where all do one thing, so does a role
      const mine = spans.find(([, , low, high]) => all || (low <= alone() && alone() <= high));
      if (!mine) return null;
      const [from, , , , set] = mine;
      const within = into - from;
      const found = sets[set].moves.find(([begin, end]) => begin <= within && within < end);
      return found ? { label: found[2], figure: found[3], from: from + found[0], to: from + found[1] } : null;
    }

    function words(place) {
      const one = parts[place.part];
      if (one.join) return [one.name];
      return (one.danced || [])
        .filter(([from, to]) => from <= place.into && place.into < to)
        .map(([from, , low, high, set]) => {
          const within = place.into - from;
          const move = sets[set].moves.find(([begin, end]) => begin <= within && within < end);
          return `${who(one, low, high)}: ${sets[set].name}${move ? `, ${move[2]}` : ""}`;
        });
    }

    function who(one, low, high) {
      const rows = one.rows || [];
      if (high - low + 1 >= rows.length) return gettext("Everyone");
      const names = rows.slice(low, high + 1).reduce((said, one) => bank.row([said, one]));
      return names.charAt(0).toUpperCase() + names.slice(1);
    }

    function tell(place, number) {
      const one = parts[place.part];
      const into = Math.floor(place.into);
      big.toggleAttribute("data-quiet", one.counts === undefined);
      big.textContent = number ?? (one.counts === undefined ? "…" : String((into % phrase) + 1));
      now.textContent = one.counts === undefined
        ? gettext("{section}, not counted", { section: one.short })
        : gettext("{section}, count {count} of {many}", { section: one.short, count: Math.min(into + 1, one.counts), many: one.counts });
      const lines = words(place);
      if (lines.join() !== [...whoNow.children].map((line) => line.textContent).join()) {
        whoNow.replaceChildren(...lines.map((text) => Object.assign(document.createElement("li"), { textContent: text })));
      }
      if (at.part !== place.part || !root.dataset.drawn) newPart(place.part);
      at = { ...place };
    }

    function newPart(n) {
      root.dataset.drawn = "";
      const names = (paths.parts[n].roles || []).map((name, number) => [String(number), gettext("Only {role}", { role: name })]);
      const before = role.value;
      role.replaceChildren(new Option(gettext("Everyone"), ""), ...names.map(([value, name]) => new Option(name, value)));
      role.value = names.some(([value]) => value === before) ? before : "";
      role.closest("p").hidden = names.length < 2;
      marksAndWays(n);
    }

    function marksAndWays(n) {
      stage.roles(paths.parts[n], alone());
      stage.draw(paths.parts[n], shownWays.checked, alone());
    }

    // one step by hand, forwards or back, over the parts that are chosen
    function stepBy(by) {
      stop();
      const all = chosen();
      let { part: n, into } = all.includes(at.part) ? at : { part: all[0], into: 0 };
      into += by;
      while (into >= length(n) && all.indexOf(n) < all.length - 1) { into -= length(n); n = all[all.indexOf(n) + 1]; }
      while (into < 0 && all.indexOf(n) > 0) { n = all[all.indexOf(n) - 1]; into += length(n); }
      const place = { part: n, into: Math.min(Math.max(0, Math.floor(into)), Math.max(0, length(n) - 1)) };
      tell(place);
      draw(place);
      said.textContent = [now.textContent, ...words(place)].join(". ");
    }

    function play() {
      if (!player) return;
      const all = chosen();
      if (!all.includes(at.part) || (at.part === all.at(-1) && at.into >= length(at.part) - 1)) at = { part: all[0], into: 0 };
      const from = all.indexOf(at.part);
      first = from;
      offset = parts[at.part].counts === undefined ? 0 : Math.floor(at.into / phrase) * phrase;
      const stretches = dance.from(all.slice(from).map((n) => parts[n]), offset);
      player.load({ tempo: Math.round(tempo * rate), phrase, loop: false, stretches });
      player.play();
    }

    function stop() { if (player && player.state() !== "stopped") player.stop(); }

    function toggle() {
      if (player && player.state() === "waiting") { player.next(); return; }
      if (player && player.state() !== "stopped") stop(); else play();
    }

    // between two counts the dancers move; where motion is unwanted they stand at each count
    function frame() {
      if (!playing) { frames = 0; return; }
      // by the clock of the sound, so that the two cannot drift apart, and a count told late holds nobody up
      const gone = still.matches ? 0 : player.gone() * (playing.spans ? rate : 1);
      draw({ part: playing.part, into: playing.into }, gone);
      frames = requestAnimationFrame(frame);
    }

    function run(which) {
      playing = which;
      if (which && !frames) frames = requestAnimationFrame(frame);
    }

    if (player) {
      player.onState(({ state, stretch, trouble }) => {
        go.textContent = state === "stopped" ? gettext("Start") : gettext("Stop");
        next.hidden = state !== "waiting";
        if (trouble) said.textContent = trouble;
        word.textContent = "";
        if (state === "stopped") { run(null); draw(at); return; }
        if (state !== "waiting") return;
        const n = chosen()[first + stretch];
        tell({ part: n, into: 0 }, "…");
        said.textContent = gettext("{section}. {cue} Then press next.", { section: parts[n].short, cue: parts[n].cue || "" });
        run({ part: n, into: 0, spans: true });
        next.focus();
      });
      player.onCount((beat) => {
        const n = chosen()[first + beat.stretch];
        const into = Math.max(0, beat.count - 1) + (beat.stretch === 0 ? offset : 0);
        const place = { part: n, into };
        tell(place, String(beat.shown));
        if (beat.kind === "in") now.textContent = gettext("Counting in: {section}", { section: parts[n].short });
        word.textContent = beat.word ? `“${beat.word}”` : "";
        if (beat.kind === "in") { run(null); draw(place); return; }
        run({ part: n, into });
      });
    }

    choice.addEventListener("change", () => { stop(); const place = { part: chosen()[0], into: 0 }; tell(place); draw(place); });
    role.addEventListener("change", () => { marksAndWays(at.part); tell(at); draw(at); });
    shownWays.addEventListener("change", () => marksAndWays(at.part));
    go.addEventListener("click", toggle);
    next.addEventListener("click", () => { go.focus(); player.next(); });
    for (const [name, by] of [["back", -1], ["on", 1], ["phrase-back", -phrase], ["phrase-on", phrase]]) {
      part(name).addEventListener("click", () => stepBy(by));
    }
    for (const [name, by] of [["slower", -STEP], ["faster", STEP]]) {
      part(name).addEventListener("click", () => {
        rate = Math.min(1, Math.max(SLOWEST, Math.round((rate + by) * 10) / 10));
        speed.textContent = rate === 1 ? gettext("as danced") : gettext("{percent} in a hundred of the speed", { percent: Math.round(rate * 100) });
        if (player && player.state() !== "stopped") player.tempo(tempo * rate);
      });
    }
    root.addEventListener("keydown", (event) => {
      const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
      if (!by || event.target.closest("select, input")) return;
      event.preventDefault();
      stepBy(by);
    });
    document.addEventListener("keydown", (event) => {
      if (event.key !== " " || event.repeat || event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.target.closest(OWN_KEYS) || event.target.matches("input")) return;
      event.preventDefault();
      toggle();
    });

    root.hidden = false;
    dance.myClass(root, data.paths, (found) => {
      stop();
      paths = found;
      stage = dance.stage(part("stage"), paths);
      delete root.dataset.drawn;
      tell(at);
      draw(at);
    });
  }
})();
