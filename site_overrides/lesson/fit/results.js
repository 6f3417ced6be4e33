// What a fit gives, in plain sentences: minutes, groups, who shows when, floor. `said` is the part's dataset. Loaded with
// the floor when a lesson is fitted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext, ngettext } = bank;

  const SITS = /\b(?:sits?|eistedd\w*)\b/i; // where, says the step

  const LOOKS = /\b(?:look|watch|listen)(?:ers?)? (?:out )?for\b|\b(?:edrych|gwylio|gwrando) am\b/i; // what, says the step

  const FACING = {
    partner: gettext("Watchers sit with their feet in, facing the partner they look at."),
    pair: gettext("Watchers sit with their feet in, facing the pair they look at."),
    group: gettext("Watchers sit with their feet in, facing the group they look at."),
  };

  form.results = (facts, plan, fit, said) => [
    ...minutes(facts, plan, fit),
    ...groups(facts, plan, fit, said),
    ...showing(facts, plan, fit, said),
    ...form.space(facts, plan, fit, said),
  ];

  function minutes(facts, plan, fit) {
    const { make, timed, nameOf } = form;
    const all = total(facts);
    const have = fit.available - fit.changing;
    const parts = [make("h3", gettext("Minutes"))];
    const said = { minutes: bank.sums.minutes(have), all };
    const list = (sitting) => make("ol.fit-minutes", "", ...timed(sitting).map(({ step, minutes: long, start, end }) => {
      const planned = facts.find((one) => one.number === step)?.minutes ?? long;
      const lasts = bank.sums.minutes(long);
      const how = planned === long ? lasts : gettext("{minutes}, planned {planned}", { minutes: lasts, planned });
      return make("li", "", make("span.time", form.fromTo(start, end)), " ",
        make("span", "", `${nameOf(step)} `, make("span.quiet", how)));
    }));
    if (!form.isTaught(plan, fit)) return [...parts, make("p", `${gettext("You have {minutes} to teach.", said)} ${plan.sentence}`)];
    if (plan.sittings.length > 1) {
      const needs = bank.sums.leasts(facts).reduce((sum, least) => sum + least, 0);
      const opening = gettext("You have {minutes} to teach and the lesson needs at least {needs}.", { ...said, needs });
      parts.push(make("p", `${opening} ${plan.sentence}${orWithout(facts, have)}`));
      plan.sittings.forEach((sitting, index) => parts.push(make("h4", form.sittings[index]), list(sitting)));
    } else {
      const teams = bank.sums.wanting(facts, bank.sums.roomToday(fit)).some(({ minutes: as, wants }) => wants > as);
      const opening = [
        have === all ? gettext("You have {minutes} to teach, as planned.", said)
          : gettext("You have {minutes} to teach; the lesson is planned for {all}.", said),
        teams ? gettext("What teams dance in turn gets the greater share.")
          : have < all ? gettext("Each step keeps its share.")
          : have > all && gettext("Warm-up and cool-down stay as planned; the rest is longer."),
      ].filter(Boolean).join(" ");
      parts.push(make("p", opening), list(plan.sittings[0]));
    }
    if (facts.some(regroups)) parts.push(make("p.quiet", gettext("Getting into groups is counted in, half a minute each time.")));
    return parts;
  }

  function orWithout(facts, have) {
    const left = bank.sums.leaveOut(facts, have).map((one) => `“${form.nameOf(one.number)}”`);
    if (!left.length) return "";
    const steps = left.reduce((before, last) => gettext("{before} and {last}", { before, last }));
    return ` ${gettext("Or leave out {steps}, which can wait: then one sitting holds it.", { steps })}`;
  }

  function groups(facts, plan, fit, said) {
    const { sums } = bank;
    const list = form.make("dl.rows");
    const found = new Set();
    const groupings = bank.groupings(facts);
    const today = facts.map((one) => one.grouping);
    facts.forEach((one, index) => {
      const kind = `${one.grouping} ${one.grouping === "half class" ? one.halves : ""}`;
      if (found.has(kind)) return;
      found.add(kind);
      const size = sums.groupSize(one.grouping, fit.dancing);
      const sizes = sums.classGroups(groupings, one.grouping, fit.dancing);
      const step = form.step(one.number);
      const plain = sizes.length === 1 || size === 1;
      const say = sums.groupsSentence(groupings, one.grouping, fit.dancing, today, stood(facts.slice(0, index)));
      // groups that stand already are not made again
      const made = one.grouping === "half class" ? Boolean(form.turnOf(one, plan, fit)?.teams)
        : groupings.slice(0, groupings.length - today.length).includes(one.grouping);
      const into = step.querySelector(".into") && !plain;
      const halved = one.grouping === "half class";
      const words = halved && !made ? [halves(one, groupings, fit, step)] : [
        plain || halved ? "" : form.sentence(sums.groupsInWords(sizes)),
        one.grouping === "alone" ? sums.aloneSentence(facts) : toSay(one, say, plain ? false : made, into),
        sums.oddGroups(sizes, size, JSON.parse(said.odd ?? "{}")[one.grouping] ?? {}),
      ];
      list.append(form.make("div", "",
        form.make("dt", form.asWritten(step.querySelector(".grouping"))),
        form.make("dd", words.filter(Boolean).join(" "))));
    });
    return [form.make("h3", gettext("Groups")), list];
  }

  // who the two halves are; a step that says it itself is not to be contradicted
  function halves({ halves: kind, number }, groupings, fit, step) {
    const { sums } = bank;
    const into = step.querySelector(".into");
    if (form.namesTeams(step)) return gettext("The step says who is in which team.");
    if (kind === "in each group") return gettext("As step {number} has it: {into}", { number, into: form.asWritten(into) });
    const two = sums.halvesToday(groupings, fit.dancing);
    const [one, other] = two.map((sizes, n) => sums.floor.teamInWords(n + 1, sizes));
    if (kind === "teams" && other) return `${one} ${other}`;
    if (!into || !other) return gettext("Say “{words}”", { words: sums.groupsSentence(groupings, "half class", fit.dancing) });
    const [here, there] = two.map((sizes) => (Math.max(...sizes) === 1 ? String(sizes.length) : sums.groupsInWords(sizes)));
    return form.sentence(gettext("one half: {here}; the other: {there}", { here, there }));
  }

  // the groups by whose places pupils stand already, though each danced alone
  const stood = (before) => before.map(({ stands }) => stands).filter(Boolean);

  function toSay({ grouping }, words, made, into) {
    if (made) {
      const again = grouping === "half class" ? gettext("Stay in your teams.")
        : grouping === "pairs" ? gettext("Find your partner from earlier lessons.") : gettext("Find your group from earlier lessons.");
      return gettext("Say “{words}”", { words: again });
    }
    // a step that says itself how groups are made is not to be contradicted
    return into ? gettext("The step says how they are made.") : gettext("Say “{words}”", { words });
  }

  // what is done with who is left over is no matter where the class of today has nobody left: a teacher of thirty read of sevens
  form.leftOver = (facts, fit) => facts.forEach(({ number, stands, grouping }) => {
    const line = form.step(number).querySelector(".left-over");
    if (!line) return;
    line.written ??= [...line.childNodes];
    const kind = stands ?? grouping, size = bank.sums.groupSize(kind, fit?.dancing);
    const even = fit && bank.sums.classGroups(bank.groupings(facts), kind, fit.dancing).every((one) => one === size);
    line.replaceChildren(...(even ? [] : line.written));
  });

  function showing(facts, plan, fit, said) {
    const parts = [];
    facts.forEach((one, index) => {
      const long = plan.sittings.flat().findLast(({ step }) => step === one.number).minutes;
      const teams = form.turnOf(one, plan, fit)?.teams ? bank.sums.roomToday(fit).sharing.teams.length : 0;
      const shown = bank.sums.showing(facts, index, long, fit.dancing, teams || (one.halves === "teams" ? 2 : 0));
      if (!shown) return;
      const step = form.step(one.number);
      const own = !teams && one.halves !== "teams" && step.querySelector(".into");
      const closing = one.phase === "look and talk";
      const told = LOOKS.test([...step.querySelectorAll(".say, .task, .you")].map((words) => words.textContent).join(" "));
      const look = form.said(step.querySelector(".look-for")) || (closing && !told ? form.said(document.querySelector(".talk .look-for")) : "");
      const words = [
        own ? gettext("The step says who dances and who watches.") : shown.who,
        own && SITS.test(own.textContent) ? "" : where(shown, closing, said),
        look && gettext("They look for this: {what}", { what: look }),
        shown.where && fit.watching ? watchToo(fit.watching) : "",
        takes(shown, one, long),
      ];
      parts.push(form.make("p", "", form.make("strong", `${form.nameOf(one.number)}. `), words.filter(Boolean).join(" ")));
    });
    return parts.length ? [form.make("h3", gettext("Showing")), ...parts] : [];
  }

  // how a step is danced in turns in the hall of the day; null where all dance at once
  form.turnOf = (one, plan, fit) => {
    const room = bank.sums.roomToday(fit);
    return room && bank.sums.inTurns(one, form.shortest(plan.sittings, one, form.isTaught(plan, fit)), room);
  };

  function takes(shown, { shows }, long) {
    const needs = bank.sums.minutes(shown.needs);
    if (shown.fits) return gettext("It takes about {needs} of the {minutes}.", { needs, minutes: long });
    const ways = [
      shown.instead,
      gettext("show one part of it only"),
      shows.talk && gettext("leave more of the talk for the classroom"),
    ].filter(Boolean).reduce((first, next) => gettext("{first}, or {next}", { first, next }));
    return gettext("It takes about {needs} and the step has {minutes}: {ways}.", { needs, minutes: long, ways });
  }

  function where(shown, closing, said) {
    if (!shown.where) return "";
    if (closing && said.facing) return FACING[said.facing];
    const own = bank.danceOnFloor?.waiting?.where; // as the unit says of those who do not dance
    if (own) return gettext("Those who watch sit {where}.", { where: own });
    const front = said.front.charAt(0).toLowerCase() + said.front.slice(1);
    return said.sits ?? `${shown.where} ${gettext("The front: {place}", { place: front })}`;
  }

  function watchToo(many) {
    return ngettext(
      "The one who cannot dance today watches with them.",
      "The {number} who cannot dance today watch with them.",
      many,
      { number: bank.sums.numberInWords(many) },
    );
  }

  function regroups(one, index, facts) {
    return bank.sums.regrouped(index ? facts[index - 1].grouping : null, one.grouping);
  }

  function total(facts) { return facts.reduce((sum, one) => sum + one.minutes, 0); }
})();
