// Where a lesson stands: which step, how long each has had, how far behind. Sums only: no DOM, no clock.
// Times are milliseconds. A plan is a list of { step, time, left }, `left` for one left out to catch up.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const { gettext } = bank;
  const MINUTE = 60000;
  // common practice, no source: what was on the card for less was jumped over, not taught
  const TAUGHT = MINUTE / 2;

  const whole = (time) => Math.ceil(time / MINUTE - 1e-6);
  const copied = (plan) => plan.map((one) => ({ ...one }));

  function fresh(day, sitting, parts, minutes) {
    return {
      day, sitting, minutes, at: -1, started: null, ended: null, entered: null, paused: false,
      plan: parts.map(({ step, minutes: long }) => ({ step, time: long * MINUTE, left: false })),
      spent: parts.map(() => 0), done: parts.map(() => false), before: null, said: "",
    };
  }

  // whether what was kept is a card for these steps; anything else starts afresh
  function sound(kept, day, numbers) {
    const number = (value) => Number.isFinite(value);
    if (!kept || kept.day !== day || !Array.isArray(kept.plan) || !kept.plan.length) return false;
    const long = kept.plan.length;
    return number(kept.minutes) && number(kept.started) && number(kept.sitting) && typeof kept.said === "string"
      && plan(kept.plan) && (kept.before === null || (plan(kept.before) && kept.before.length === long))
      && Number.isInteger(kept.at) && kept.at >= 0 && kept.at <= long
      && (kept.ended === null || number(kept.ended)) && (kept.at < long || number(kept.ended))
      && (kept.entered === null || number(kept.entered)) && typeof kept.paused === "boolean"
      && Array.isArray(kept.spent) && kept.spent.length === long && kept.spent.every(number)
      && Array.isArray(kept.done) && kept.done.length === long && kept.done.every((one) => typeof one === "boolean");

    function plan(list) {
      return Array.isArray(list)
        && list.every((one) => one && numbers.includes(one.step) && number(one.time) && typeof one.left === "boolean");
    }
  }

  function start(state, now) {
    return { ...state, at: 0, started: now, entered: now };
  }

  const finish = (state) => state.started + state.minutes * MINUTE;
  const running = (state) => state.started !== null && state.at < state.plan.length;

  function spent(state, index, now) {
    const since = index === state.at && state.entered !== null ? Math.max(0, now - state.entered) : 0;
    return state.spent[index] + since;
  }

  const remaining = (state, index, now) => Math.max(0, state.plan[index].time - spent(state, index, now));

  // How late the lesson will end as things stand; under 0 is early. Steps before this one that were
  // jumped over are not counted on.
  function behind(state, now) {
    let end = now + remaining(state, state.at, now);
    for (let index = state.at + 1; index < state.plan.length; index += 1) {
      if (!state.done[index] && !state.plan[index].left) end += remaining(state, index, now);
    }
    return end - finish(state);
  }

  // Goes to another step; the end is one more than the last.
  function go(state, to, now) {
    if (state.started === null) return { ...state, at: Math.min(to, state.plan.length - 1) };
    const next = { ...state, at: to, spent: [...state.spent], done: [...state.done] };
    if (state.at < state.plan.length) {
      next.spent[state.at] = spent(state, state.at, now);
      if (to > state.at && next.spent[state.at] >= TAUGHT) next.done[state.at] = true;
    }
    next.paused = false;
    next.entered = to < state.plan.length ? now : null;
    next.ended = to < state.plan.length ? null : now;
    return next;
  }

  function turn(state, way, now) {
    let to = state.at + way;
    while (state.plan[to]?.left) to += way;
    if (to > state.plan.length || to < 0 || (to < 0 && state.started === null)) return state;
    return go(state, to, now);
  }

  function pause(state, now) {
    if (state.paused) return { ...state, paused: false, entered: now };
    const times = [...state.spent];
    times[state.at] = spent(state, state.at, now);
    return { ...state, paused: true, entered: null, spent: times };
  }

  // A minute more for this step, from now where its time is already over.
  function more(state, now) {
    const plan = copied(state.plan);
    plan[state.at].time = Math.max(plan[state.at].time, spent(state, state.at, now)) + MINUTE;
    return { ...state, plan, before: state.plan, said: gettext("A minute more for this step.") };
  }

  const undo = (state) => ({ ...state, plan: state.before, before: null, said: gettext("It is as it was before.") });

  // Fits what is still to come into the time left. `facts` by step number. Gives { state, left, over }:
  // the indexes left out, and how many minutes late it ends even so.
  function catchUp(state, facts, now) {
    const coming = [];
    for (let index = state.at; index < state.plan.length; index += 1) {
      if (index === state.at || (!state.done[index] && !state.plan[index].left)) coming.push(index);
    }
    const steps = coming.map((index) => toFit(state, index, facts(state.plan[index].step), now));
    const time = Math.max(0, finish(state) - now);
    const minutes = Math.floor(time / MINUTE);
    const { minutes: shares, over: tooMany } = bank.sums.catchUp(steps, minutes, groupingNow(state, facts, now));
    const plan = copied(state.plan), left = [];
    coming.forEach((index, place) => {
      const here = index === state.at;
      // the odd seconds go to the step that is being taught
      const odd = here && !tooMany ? time - minutes * MINUTE : 0;
      plan[index].time = shares[place] * MINUTE + spent(state, index, now) + odd;
      plan[index].left = !here && shares[place] === 0;
      if (plan[index].left) left.push(index);
    });
    const next = { ...state, plan, before: state.plan };
    return { state: next, left, over: Math.max(0, whole(behind(next, now))) };
  }

  // What the sums take: the part of a step that is still to come.
  function toFit(state, index, fact, now) {
    const least = Math.max(0, fact.least - Math.floor(spent(state, index, now) / MINUTE));
    const minutes = Math.max(whole(remaining(state, index, now)), spent(state, index, now) ? 0 : least);
    return { ...fact, minutes, least: Math.min(least, minutes) };
  }

  // How pupils are grouped now: as this step wants them once it is under way, else as the one before did.
  function groupingNow(state, facts, now) {
    let at = state.at;
    if (!spent(state, at, now)) at -= 1;
    while (state.plan[at]?.left) at -= 1;
    return at < 0 ? null : facts(state.plan[at].step).grouping;
  }

  hall.card = { MINUTE, whole, fresh, sound, start, finish, running, spent, remaining, behind, go, turn, pause, more, undo, catchUp };
})();
