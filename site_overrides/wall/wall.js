// The wall: one whole instruction at a time, very large. Without script all steps stand below one another.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const LONG = 50; // letters of groups that are set smaller

  for (const root of document.querySelectorAll('[data-part="wall"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("wall:", error); }
  }

  function start(root) {
    const { hall, settings } = bank;
    const { unit, lesson } = root.dataset;
    const kept = `wall/${unit}/${lesson}`;
    const facts = bank.stepFacts(root);
    const bar = document.querySelector(".wall-foot");
    const said = document.createElement("p"), place = document.createElement("span");
    let screens = [], at = 0;
    const count = hall.wallCount((words) => say(words), mark);
    const steps = [...root.querySelectorAll(".wall-step")].map((section) => {
      const lines = [...section.querySelectorAll("[data-line]")];
      const strips = [...section.querySelectorAll("[data-strip]")];
      const counted = section.querySelector("[data-count]");
      return { section, lines, strips, count: counted && count.take(counted) };
    });
    const fits = hall.wallFits(root, () => screens[at]?.step?.section);
    const openings = [...root.querySelectorAll("[data-start]")];
    // each picture alone first; then a screen for each line, and more where there are more strips than lines
    screens = [...openings.map((_, part) => ({ step: null, part })), ...steps.flatMap((step) =>
      Array.from({ length: Math.max(step.lines.length, step.strips.length) }, (_, part) => ({ step, part })))];
    at = restored();

    function restored() {
      const found = settings.get(kept);
      const sound = found && found.day === bank.sums.day(Date.now()) && Number.isInteger(found.at);
      return sound && found.at >= 0 && found.at < screens.length ? found.at : 0;
    }

    function go(to) {
      if (to < 0 || to >= screens.length || to === at) return;
      if (screens[to].step !== screens[at].step) { count.stop(); say(""); }
      at = to;
      settings.keep(kept, { day: bank.sums.day(Date.now()), at });
      show();
    }

    function show() {
      const { step, part } = screens[at];
      for (const one of steps) one.section.toggleAttribute("data-now", one === step);
      openings.forEach((one, n) => one.toggleAttribute("data-now", !step && n === part));
      if (step) parts(step, part);
      else place.textContent = "";
      // the first screen of a step has room for what the device keeps; the others are the pupils' alone
      bar.toggleAttribute("data-first", at === openings.length);
      back.disabled = at === 0;
      next.disabled = at === screens.length - 1;
      fits();
      window.scrollTo(0, 0);
    }

    function parts(step, part) {
      const pick = (all) => all.forEach((one, index) => one.toggleAttribute("data-now", index === Math.min(part, all.length - 1)));
      pick(step.lines);
      pick(step.strips);
      const room = step.section.querySelector(".room");
      if (room) room.hidden = part > 0; // where the front is, once
      const last = Math.max(step.lines.length, step.strips.length);
      const told = { number: steps.indexOf(step) + 1, many: steps.length, part: part + 1, parts: last };
      place.textContent = last > 1
        ? gettext("Step {number} of {many}, {part} of {parts}", told)
        : gettext("Step {number} of {many}", told);
    }

    // the move that is danced now, in the row that has it; a step counts its moves once or several times
    function mark(reached) {
      const step = screens[at]?.step;
      if (step && phrase(step, reached)) return;
      const rows = (step ? step.strips : []).filter((strip) => strip.dataset.moves).map((strip) => ({
        strip, spans: strip.dataset.moves.split(" ").map((span) => span.split("-").map(Number)),
      }));
      if (!rows.length) return;
      const now = reached === null ? -1 : reached % rows.at(-1).spans.at(-1)[1];
      for (const { strip, spans } of rows) {
        const moves = strip.querySelectorAll(".move");
        spans.forEach(([from, to], n) => moves[n].toggleAttribute("data-lit", from <= now && now < to));
        const here = spans[0][0] <= now && now < spans.at(-1)[1];
        if (!here || strip.hasAttribute("data-now")) continue;
        for (const other of step.strips) other.toggleAttribute("data-now", other === strip);
        fits();
      }
    }

    // the same among the words of all the rows, which stay up while they are counted
    function phrase(step, reached) {
      const moves = [...step.section.querySelectorAll(".phrase [data-span]")];
      const now = reached === null ? -1 : reached % Number(step.section.querySelector("[data-count]").dataset.counts);
      for (const move of moves) {
        const [from, to] = move.dataset.span.split("-").map(Number);
        move.toggleAttribute("data-lit", from <= now && now < to);
      }
      if (moves.length && reached !== null) {
        for (const one of step.strips) one.toggleAttribute("data-now", one.classList.contains("phrase"));
      }
      return moves.length > 0;
    }

    function fitted() {
      const fit = settings.fit();
      bank.needFloor(fit, fitted);
      const room = bank.sums.roomToday(fit);
      const teams = root.querySelector("[data-teams]");
      if (teams) teams.textContent = room ? bank.sums.hallToday(facts, room) : "";
      bank.plansToday?.(root, room, fit);
      const minutes = new Map(bank.sums.lessonToday(facts, fit).sittings.flat().map((one) => [one.step, one.minutes]));
      for (const { section } of steps) {
        const [lasts, groups] = ["lasts", "groups"].map((name) => section.querySelector(`[data-${name}]`));
        groups.dataset.written ??= groups.textContent;
        const one = facts.find(({ number }) => number === Number(section.dataset.step));
        lasts.textContent = bank.sums.minutes(minutes.get(Number(section.dataset.step)));
        const words = bank.sums.groupsToday(facts, section.dataset, fit) || groups.dataset.written;
        groups.textContent = room
          ? bank.sums.groupsInTurns(words, one, bank.sums.inTurns(one, minutes.get(one.number), room)) : words;
        groups.toggleAttribute("data-long", groups.textContent.length > LONG);
      }
      if (!count.counting()) say(settings.trouble);
    }

    function say(words) {
      if (said.textContent !== words) said.textContent = words;
    }

    const back = hall.button(gettext("Back"), () => go(at - 1)), next = hall.button(gettext("Next"), () => go(at + 1));
    said.className = "wall-said";
    said.setAttribute("role", "status");
    place.className = "wall-place";
    place.setAttribute("role", "status");
    bar.prepend(said);
    bar.append(back, place, next);
    if (document.fullscreenEnabled) bar.append(hall.button(gettext("Full screen"), toggleFull));

    function toggleFull() {
      const turned = document.fullscreenElement
        ? document.exitFullscreen()
        : document.documentElement.requestFullscreen();
      turned.catch(() => say(gettext("This browser keeps its window as it is.")));
    }

    // a press anywhere but on a button or a link goes on
    root.addEventListener("click", (event) => { if (!event.target.closest("button, a")) go(at + 1); });
    hall.keys({
      next: () => go(at + 1),
      back: () => go(at - 1),
      space: () => { const { step } = screens[at]; if (!step?.count) return false; count.toggle(step.count); },
      escape: () => { if (!count.counting()) return false; count.stop(); },
    });
    settings.onChange(fitted);
    document.body.dataset.live = "";
    fitted();
    show();
    hall.awake(true);
  }
})();
