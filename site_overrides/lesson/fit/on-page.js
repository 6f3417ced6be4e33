// The fit on the page itself: the minutes of the lesson, its short lines, each step, and two sittings.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;
  const SMALLEST = "11"; // points
  const MORE = "more"; // than two sides

  form.onPage = (article) => {
    const { paper } = document.documentElement.dataset;
    const whole = article.querySelector(".first .facts strong");
    const short = article.querySelector(".short-lines");
    const lines = [...short.children];
    const written = [...short.childNodes]; // with the white space between them
    const facts = bank.stepFacts(article);
    const teams = article.querySelector("[data-teams]");

    return (plan, fit) => {
      const taught = form.isTaught(plan, fit);
      const room = bank.sums.roomToday(fit);
      const sittings = plan.sittings.map(form.timed);
      const two = sittings.length > 1;
      const minutes = bank.sums.minutes(plan.minutes).replace(" ", "\u00a0");
      const now = two ? gettext("Two sittings of {minutes}", { minutes }) : minutes;
      put(whole, taught ? now : form.asWritten(whole));
      short.replaceChildren(...(taught ? sittings.flatMap((one, index) => shortLines(one, two ? index : null)) : written));
      facts.forEach((one, index) => {
        const first = !facts.slice(0, index).some((before) => before.grouping === one.grouping && before.halves === one.halves);
        step(facts, one, sittings, taught, first ? fit : null, room);
      });
      teams.textContent = room ? [bank.sums.hallToday(facts, room, Boolean(article.querySelector('[data-part="fit"]').dataset.room)),
        form.asOften?.(facts, plan, room)].filter(Boolean).join(" ") : "";
      teams.hidden = !teams.textContent;
      bank.plansToday?.(article, room, fit);
      lessSpace(room);
      form.marks?.(article, facts, room);
      form.leftOver?.(facts, fit);
      form.front?.(article, room);
      for (const old of article.querySelectorAll(".sitting")) old.remove();
      if (two) turn(sittings);
      // two sittings, and teams, say more than the lesson's size on paper was reckoned for
      document.documentElement.dataset.paper = (two || !teams.hidden) && paper !== MORE ? SMALLEST : paper;
    };

    // the author's own way in a small hall is for one in which nothing else is found: two ways at once would be one too many
    function lessSpace(room) {
      const own = article.querySelector('[data-part="fit"]').dataset.room;
      for (const words of article.querySelectorAll(".aside-rows dd")) {
        if (own && words.textContent === own) words.parentElement.hidden = Boolean(room?.found);
      }
    }

    // steps that stood on one line stay on one line, as far as they follow one another
    function shortLines(sitting, index) {
      const made = [];
      if (index !== null) made.push(form.make("li.sitting-name", "", form.make("strong", form.sittings[index])));
      let last = null;
      for (const { step: number, start, end } of sitting) {
        const line = lines.find((one) => one.dataset.steps.split(" ").includes(String(number))) ?? null;
        if (line && last?.line === line) {
          last.does.append("; ", link(number));
        } else {
          const does = form.make("span.do", "", number ? link(number) : form.nameOf(0));
          last = { line, does, start, time: form.make("span.time") };
          made.push(form.make("li", "", last.time, " ", does));
        }
        last.time.textContent = form.fromTo(last.start, end);
      }
      return made;
    }
  };

  function link(number) {
    const made = form.make("a", form.numbered(number) + form.nameOf(number));
    made.href = `#at-step-${number}`;
    return made;
  }

  // whether a step's own words say who is in which team: sixteen and fourteen, where halves would be fifteen
  form.namesTeams = (step) => /\b(?:team|tîm) 1:/i.test(step.querySelector(".you")?.textContent);

  // with `fit`, pupils are in these groups for the first time, and their number is said
  function step(facts, one, sittings, taught, fit, room) {
    const element = form.step(one.number);
    const [time, minutes, grouping] = [".time", ".minutes", ".grouping"].map((name) => element.querySelector(name));
    const at = sittings.flat().filter((part) => part.step === one.number);
    const times = [...new Set(at.map(({ start, end }) => form.fromTo(start, end)))];
    const lasts = [...new Set(at.map((part) => bank.sums.minutes(part.minutes)))];
    const each = at.length > 1 && lasts.length === 1;
    put(time, taught ? then(times) : form.asWritten(time));
    const long = each ? gettext("{minutes} each time", { minutes: lasts[0] }) : then(lasts);
    put(minutes, taught ? long : form.asWritten(minutes));
    const into = element.querySelector(".into");
    const groups = (!form.namesTeams(element) && bank.sums.groupsToday(facts, one, fit)) || form.asWritten(grouping);
    const turn = room && bank.sums.inTurns(one, form.shortest(sittings, one, taught), room);
    const tries = element.querySelector(".tries");
    if (tries) put(tries, taught && at.length ? bank.sums.minutes(bank.sums.toTry(at[0].minutes, turn)) : form.asWritten(tries));
    put(grouping, room ? bank.sums.groupsInTurns(groups, one, turn) : groups);
    if (!into) return;
    const now = room ? bank.sums.intoToday(form.asWritten(into), facts, one, turn, room) : form.asWritten(into);
    put(into, now === form.asWritten(into) ? now : gettext("say {into}", { into: now }));
  }

  const then = (words) => words.reduce((first, second) => gettext("{first}, then {second}", { first, second }));

  // where the first sitting ends and the second begins, between its last step and the next
  function turn([first, second]) {
    const before = first.map((one) => one.step);
    const goesOn = second.findIndex(({ step: number }) => number && !before.includes(number));
    const closing = first.filter(({ step: number }) => number > second[goesOn].step);
    const line = (parts) => parts.map(({ step: number, start, end }) => `${form.nameOf(number)}, ${form.fromTo(start, end)}`).join("; ");
    form.step(second[goesOn].step).before(form.make("li.sitting", "",
      form.make("p", "", form.make("strong", `${gettext("The first sitting ends here.")} `), closing.length ? `${line(closing)}.` : ""),
      form.make("p", "", form.make("strong", `${gettext("The second sitting:")} `), gettext("{steps}. Then:", { steps: line(second.slice(0, goesOn)) }))));
  }

  function put(element, words) {
    form.asWritten(element);
    if (element.textContent !== words) element.textContent = words;
  }
})();
