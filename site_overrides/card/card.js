// The card for the hand: one step at a time and the time there is. Without script all steps stand below one another.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const LOOK = 1000; // milliseconds between looks at the clock
  const WIDEST = 10; // minutes behind or ahead that fill the bar
  const MAY_DIM = gettext("This device may let its screen go dark; touch it now and then.");

  for (const root of document.querySelectorAll('[data-part="card"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("card:", error); }
  }

  function start(root) {
    const { hall, settings, sums } = bank;
    const { card } = hall;
    const { unit, lesson, short } = root.dataset;
    const kept = `card/${unit}/${lesson}`;
    const facts = bank.stepFacts(root);
    const part = (name) => root.querySelector(`[data-${name}]`);
    const sections = new Map([...root.querySelectorAll(".step-card")].map((one) => [Number(one.dataset.step), one]));
    const factsOf = (step) => (step ? facts.find((one) => one.number === step) : recap());
    const name = (step) => sections.get(step).querySelector("h2").textContent;
    const quietly = part("said"), told = part("told");
    let state = restored() ?? begun(0), dims = false;
    const wide = window.matchMedia("(min-width: 60rem)");
    fold();

    // on a wide screen there is room for the moves beside what is said
    function fold() {
      for (const one of root.querySelectorAll("details")) one.open = wide.matches && "wideOpen" in one.dataset;
    }

    // danced in the groups of the last step before the second sitting, which goes on with the next
    function recap() {
      const goesOn = state.plan.find((one, index) => state.plan[index - 1]?.step === 0);
      const made = facts.find((one) => one.number === goesOn?.step - 1);
      return bank.sums.recap(made?.grouping ?? "alone");
    }

    // steps that teams dance in turn get more of the minutes, which is known with the floor
    function floored() { if (state.started === null) become({ ...begun(state.sitting), at: state.at }); else show(); }

    function today() { return sums.lessonToday(facts, settings.fit()); }

    function begun(sitting) {
      const plan = today();
      const which = sitting < plan.sittings.length ? sitting : 0;
      return card.fresh(sums.day(Date.now()), which, plan.sittings[which], plan.minutes);
    }

    function restored() {
      const found = settings.get(kept);
      return card.sound(found, sums.day(Date.now()), [0, ...facts.map((one) => one.number)]) ? found : null;
    }

    function become(next) {
      const turned = next.at !== state.at;
      state = next;
      settings.keep(kept, state.started === null ? null : state);
      show();
      if (!turned) return;
      fold();
      window.scrollTo(0, 0);
      tell();
    }

    function tell() {
      const { at, plan } = state;
      if (at < 0) told.textContent = "";
      else if (at >= plan.length) told.textContent = gettext("The end of the lesson");
      else told.textContent = gettext("Step {number} of {many}: {name}", { number: at + 1, many: plan.length, name: name(plan[at].step) });
    }

    function show() {
      const { at, plan, started } = state;
      const live = card.running(state);
      root.dataset.at = at < 0 ? "begin" : at < plan.length ? "step" : "end";
      for (const [step, section] of sections) section.toggleAttribute("data-now", plan[at]?.step === step);
      part("begin").toggleAttribute("data-now", at < 0);
      // Once steps show, the lesson's title is only read out: the screen is for the step.
      part("title").classList.toggle("aside", at >= 0);
      part("finished").toggleAttribute("data-now", at >= plan.length);
      part("start-line").hidden = started !== null;
      part("clock").hidden = !live;
      part("tools").hidden = !live;
      part("undo").hidden = !live || !state.before;
      part("pause").textContent = state.paused ? gettext("Go on") : gettext("Pause");
      part("more").hidden = !root.querySelector(".step-card[data-now] .folds details");
      part("back").disabled = started === null ? at < 0 : at <= 0;
      part("next").disabled = started === null ? at >= plan.length - 1 : at >= plan.length;
      const onward = at === plan.length - 1 ? gettext("End") : gettext("Next");
      part("next").textContent = started === null ? gettext("Look ahead") : onward;
      part("change").textContent = state.said;
      showBegin();
      const room = sums.roomToday(settings.fit());
      put(part("teams"), room ? sums.hallToday(facts, room) : "");
      part("teams").hidden = !part("teams").textContent;
      bank.plansToday?.(root, room, settings.fit());
      plan.forEach((one, place) => showStep(sections.get(one.step), place));
      showEnd();
      showList();
      showTime();
    }

    function showBegin() {
      const { minutes, sittings, sentence } = today();
      const fit = settings.fit();
      // the place of the minutes stays open, to be filled in bold
      const plan = fit
        ? gettext("{minutes} to teach, {dancing} dancing.", { dancing: sums.numberInWords(fit.dancing) })
        : gettext("{minutes} to teach.");
      const [before, after] = plan.split("{minutes}");
      part("plan").replaceChildren(before, strong(sums.minutes(minutes)), `${after} ${sentence}`.trimEnd());
      const choice = part("sittings");
      choice.hidden = sittings.length < 2 || state.started !== null;
      choice.replaceChildren(...(sittings.length < 2 ? [] : [gettext("First sitting"), gettext("Second sitting")].map((words, index) => {
        const button = hall.button(words, () => { become(begun(index)); choice.querySelectorAll("button")[index].focus(); });
        button.setAttribute("aria-pressed", String(state.sitting === index));
        return button;
      })));
    }

    // how the class has its turns in a step in the hall of the day; null where all dance at once
    function turnOf({ step, time }) {
      const one = facts.find(({ number }) => number === step), room = one && sums.roomToday(settings.fit());
      return room ? sums.inTurns(one, card.whole(time), room) : null;
    }

    // also those that are not on the screen: somebody may read ahead, or search in them
    function showStep(section, at) {
      const { plan } = state;
      section.querySelector("[data-place]").textContent = gettext("Step {number} of {many}", { number: at + 1, many: plan.length });
      const groups = sums.groupsToday(facts, section.dataset, settings.fit());
      const place = section.querySelector("[data-groups]");
      place.dataset.written ??= place.textContent;
      const one = facts.find(({ number }) => number === plan[at].step);
      const room = one && sums.roomToday(settings.fit());
      const said = (one && groups) || place.dataset.written;
      const turn = turnOf(plan[at]);
      place.textContent = room ? sums.groupsInTurns(said, one, turn) : said;
      const into = section.querySelector("[data-into]");
      if (into) {
        into.dataset.written ??= into.textContent;
        into.textContent = room ? sums.intoToday(into.dataset.written, facts, one, turn, room) : into.dataset.written;
      }
      const following = plan.slice(at + 1).find((one) => !one.left);
      section.querySelector("[data-after]").textContent = following
        ? `${name(following.step)}, ${sums.minutes(card.whole(following.time))}`
        : gettext("The end of the lesson");
    }

    function showEnd() {
      const { at, plan, ended, done } = state;
      const untaught = plan.filter((one, index) => !done[index]).map((one) => name(one.step));
      const over = at >= plan.length;
      part("ended").hidden = part("untaught").hidden = !over;
      if (!over) return;
      const times = { ended: hall.clock(ended), planned: hall.clock(card.finish(state)) };
      part("ended").textContent = gettext("It ended at {ended}; {planned} was the time.", times);
      part("untaught").textContent = untaught.length
        ? gettext("Not taught: {steps}.", { steps: untaught.join("; ") })
        : gettext("Every step was taught.");
    }

    function showList() {
      const how = (one, index) => {
        if (index === state.at) return gettext("now");
        if (one.left) return gettext("left out");
        if (state.done[index]) return gettext("taught");
        return state.started !== null && index < state.at ? gettext("jumped over") : sums.minutes(card.whole(one.time));
      };
      const items = state.plan.map((one, index) => {
        const item = document.createElement("li");
        const button = hall.button(name(one.step), () => { become(card.go(state, index, Date.now())); part("next").focus(); });
        if (index === state.at) button.setAttribute("aria-current", "step");
        item.append(button, ` ${how(one, index)}`);
        return item;
      });
      part("list").replaceChildren(...items);
    }

    function showTime() {
      const now = Date.now(), { at, plan } = state;
      const tries = plan[at] && sections.get(plan[at].step).querySelector(".tries"); // half of the step's
      if (tries) put(tries, sums.minutes(sums.toTry(card.whole(plan[at].time), turnOf(plan[at]))));
      if (state.started === null) {
        put(part("would-finish"), gettext("Finish by {time}", { time: hall.clock(now + state.minutes * card.MINUTE) }));
        if (plan[at]) put(lasts(), sums.minutes(card.whole(plan[at].time)));
        return;
      }
      if (!card.running(state)) return;
      const late = card.behind(state, now), minutes = Math.trunc(late / card.MINUTE);
      const off = { minutes: sums.minutes(Math.abs(minutes)) };
      const offTime = minutes > 0 ? gettext("{minutes} behind", off) : gettext("{minutes} ahead", off);
      const pace = minutes === 0 ? gettext("On time") : offTime;
      put(part("finish"), gettext("Finish by {time}", { time: hall.clock(card.finish(state)) }));
      put(part("pace"), state.paused ? gettext("Paused. {pace}", { pace }) : pace);
      const wide = Math.min(WIDEST, Math.abs(minutes)) * (100 / WIDEST);
      part("bar").setAttribute("x", String(minutes > 0 ? 100 : 100 - wide));
      part("bar").setAttribute("width", String(wide));
      part("clock").dataset.stands = minutes === 0 ? "on-time" : minutes > 0 ? "behind" : "ahead";
      const rest = card.remaining(state, at, now);
      const left = { minutes: sums.minutes(card.whole(rest)), time: hall.clock(now + rest) };
      if (!rest) put(lasts(), gettext("its time is over"));
      else put(lasts(), state.paused ? gettext("{minutes} left", left) : gettext("{minutes} left, till {time}", left));
    }

    function lasts() { return sections.get(state.plan[state.at].step).querySelector("[data-lasts]"); }

    function begin() {
      if (state.started !== null) return;
      become({ ...card.start(begun(state.sitting), Date.now()), said: "" });
      part("next").focus();
      keepAwake();
    }

    async function keepAwake() {
      dims = !(await hall.awake(true));
      showSaid();
    }

    function showSaid() {
      const words = [settings.trouble, dims && card.running(state) ? MAY_DIM : ""].filter(Boolean).join(" ");
      put(quietly, words);
    }

    function turn(way) {
      const next = card.turn(state, way, Date.now());
      if (next === state) return;
      become({ ...next, said: "", before: null });
      if (!card.running(state)) { hall.awake(false); showSaid(); }
      else if (state.started !== null && way < 0) keepAwake();
    }

    function pause() { become(card.pause(state, Date.now())); }

    function catchUp() {
      const now = Date.now();
      if (card.behind(state, now) < card.MINUTE) {
        become({ ...state, said: gettext("You are not behind. Nothing is changed.") });
        return;
      }
      const found = card.catchUp(state, factsOf, now);
      become({ ...found.state, said: changeInWords(state, found, now) });
    }

    function changeInWords(before, { state: after, left, over }, now) {
      const { at, plan } = after;
      const said = [];
      if (left.length) said.push(gettext("Left out: {steps}.", { steps: left.map((index) => name(plan[index].step)).join("; ") }));
      if (left.length && short) said.push(short);
      const here = card.remaining(after, at, now), was = card.remaining(before, at, now);
      if (here < card.MINUTE && here < was) said.push(gettext("Finish this step now."));
      else if (was - here >= card.MINUTE) {
        said.push(gettext("This step: {minutes} more.", { minutes: sums.minutes(card.whole(here)) }));
      }
      const cut = plan.filter((one, index) => index > at && !one.left && one.time < before.plan[index].time);
      if (cut.length) {
        const steps = cut.map((one) => `${name(one.step)} ${sums.minutes(card.whole(one.time))}`).join("; ");
        said.push(gettext("Shorter: {steps}.", { steps }));
      }
      if (over) {
        const late = { minutes: sums.minutes(over) };
        said.push(gettext("It still ends {minutes} late: looking, talking and the cool-down stay.", late));
      }
      return said.join(" ") || gettext("The rest stays as it is.");
    }

    function escape() {
      const open = [...root.querySelectorAll("details[open]")].at(-1);
      if (!open) return false;
      open.open = false;
      open.querySelector("summary").focus();
      return true;
    }

    part("start").addEventListener("click", begin);
    part("next").addEventListener("click", () => turn(1));
    part("back").addEventListener("click", () => turn(-1));
    // what is folded may stand below the screen: one press brings it up
    part("more").addEventListener("click", () => {
      const folds = root.querySelector(".step-card[data-now] .folds");
      folds.scrollIntoView({ block: "start" });
      folds.querySelector("summary").focus({ preventScroll: true });
    });
    part("if").addEventListener("click", () => {
      const panel = part("trouble");
      panel.open = true;
      panel.scrollIntoView();
      panel.querySelector("summary").focus({ preventScroll: true });
    });
    part("pause").addEventListener("click", pause);
    part("minute").addEventListener("click", () => become(card.more(state, Date.now())));
    part("catch-up").addEventListener("click", catchUp);
    part("undo").addEventListener("click", () => { become(card.undo(state)); part("catch-up").focus(); });
    part("afresh").addEventListener("click", () => {
      hall.awake(false);
      become(begun(state.sitting));
      part("start").focus();
    });
    hall.keys({
      next: () => turn(1),
      back: () => turn(-1),
      space: () => { if (state.started === null) begin(); else if (card.running(state)) pause(); },
      escape,
    });
    settings.onChange(() => { bank.needFloor(settings.fit(), floored); if (state.started === null) become(begun(state.sitting)); else show(); showSaid(); });
    setInterval(showTime, LOOK);
    document.addEventListener("visibilitychange", showTime);

    for (const name of ["turn", "steps"]) part(name).hidden = false;
    root.dataset.live = "";
    show();
    showSaid();
    bank.needFloor(settings.fit(), floored);
    if (card.running(state)) keepAwake();
    bank.music?.();
  }

  function put(element, words) {
    if (element.textContent !== words) element.textContent = words;
  }

  function strong(words) {
    const element = document.createElement("strong");
    element.textContent = words;
    return element;
  }
})();
