// A year plan changed by hand: a list in each slot, and at once what the year then has.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const main = document.querySelector("[data-plan]");
  if (!main) return;
  const plan = JSON.parse(main.dataset.plan);
  const chosen = [...plan.chosen];
  const made = [...part(main, "notes").children];

  for (const place of document.querySelectorAll("[data-slot]")) start(place, Number(place.dataset.slot) - 1);

  function part(within, name) { return within.querySelector(`[data-part="${name}"]`); }

  function start(place, slot) {
    const label = document.createElement("label");
    const list = document.createElement("select");
    label.append(`Unit in slot ${slot + 1}, by hand`, list);
    list.add(option(chosen[slot]));
    // a bank may have a thousand units: they are listed where somebody comes to the list
    for (const kind of ["focus", "pointerdown"]) list.addEventListener(kind, () => fill(list, slot));
    list.addEventListener("change", () => {
      chosen[slot] = list.value === "" ? null : Number(list.value);
      say(place, slot);
    });
    place.append(label);
  }

  function fill(list, slot) {
    if (list.length > 1) return;
    const others = [null, ...plan.units.keys()].filter((unit) => unit !== chosen[slot]);
    for (const unit of others) list.add(option(unit));
  }

  function option(unit) {
    if (unit === null) return new Option("Nothing", "");
    const { title, lessons } = plan.units[unit];
    return new Option(`${title} (${many(lessons)})`, unit);
  }

  function many(lessons) { return `${lessons} lesson${lessons === 1 ? "" : "s"}`; }

  function say(place, slot) {
    const unit = plan.units[chosen[slot]];
    part(place, "unit").textContent = unit ? `${unit.title}, ${many(unit.lessons)}` : "Nothing.";
    place.querySelector(".days")?.remove();
    const { times, faults } = bank.sums.planCover(plan, chosen);
    const again = times.reduce((sum, number) => sum + Math.max(0, number - 1), 0);
    part(main, "said").textContent =
      `It covers ${times.filter(Boolean).length} of the ${times.length} things that units for this year teach, each counted alike. What comes again does so ${again} times in all. Changed by hand.`;
    for (const row of document.querySelectorAll("[data-heading]")) sayRow(row, times);
    sayFaults(faults);
    const units = chosen.flatMap((one, at) => (one === null ? [] : [` --unit ${at + 1}=${plan.units[one].slug}`]));
    part(main, "command").textContent = plan.command.replace(/ --unit \d+=\S+/g, "") + units.join("");
  }

  function sayRow(row, times) {
    const words = plan.words.map(([heading, said], n) => ({ heading, said, number: times[n] }))
      .filter((word) => word.heading === row.dataset.heading);
    const put = (name, some) => { part(row, name).textContent = some.join("; ") || "nothing"; };
    put("once", words.filter((word) => word.number === 1).map((word) => word.said));
    put("again", words.filter((word) => word.number > 1).map((word) => `${word.said} (${word.number} times)`));
    put("missing", words.filter((word) => !word.number).map((word) => word.said));
  }

  function sayFaults(faults) {
    const list = part(main, "notes");
    const lines = faults.map((fault) => {
      const line = document.createElement("li");
      line.textContent = inWords(fault);
      return line;
    });
    // the notes of the plan as it was made hold again where it is as it was
    const shown = String(chosen) === String(plan.chosen) ? made : lines;
    list.replaceChildren(...shown);
    list.hidden = !shown.length;
  }

  function inWords([kind, slot, about]) {
    if (kind === "wish") return `Not in the plan: ${plan.wishes[about][0]}.`;
    const here = `“${plan.units[chosen[slot]].title}” in slot ${slot + 1}`;
    const other = plan.units[about].title;
    if (kind === "twice") return `${here} comes a second time.`;
    if (kind === "long") return `${here} takes ${many(plan.units[about].lessons)}; the slot has ${plan.slots[slot]}.`;
    if (kind === "order") return `${here} comes before “${other}”, which it follows.`;
    return `${here} builds on “${other}”, which is not in the plan.`;
  }
})();
