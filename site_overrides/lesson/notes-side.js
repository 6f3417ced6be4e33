// A further side or two for the printer: what each step says besides that the lesson's own two sides have no room for.
// It is made of what stands on the page when that is printed, so that the page does not carry it twice.
(() => {
  const { gettext } = window.danceUnitBank;
  const article = document.querySelector("[data-lesson]");
  const LINES = 202, LETTERS = 44, PLAN = 9, STEP_HEADS = 12; // of two sides, a line, a plan without its words
  const IN_TURNS = ".sitting, .teams:not([hidden])"; // where a fitted lesson says so
  let made = null;

  window.addEventListener("beforeprint", () => {
    made?.remove();
    made = side();
    if (made) article.append(made);
  });
  window.addEventListener("afterprint", () => made?.remove());

  function side() {
    const notes = article.querySelector("section.notes");
    const inTurns = article.querySelector(IN_TURNS) ? ", .off-in-turns" : "";
    const before = [...article.querySelectorAll(`:is(.before, .tail) > :is(.off-paper${inTurns})`)].map(aside);
    const tape = article.querySelector("[data-marks]");
    if (tape) before.unshift(element("section", element("h3", gettext("Tape for this hall.")), element("p", tape.dataset.marks)));
    const besides = before.reduce((sum, one) => sum + lines(one) + 1, notes ? lines(notes) : 0);
    const steps = withFloor([...article.querySelectorAll(".step")], besides).filter(Boolean);
    if (!steps.length && !notes && !before.length) return null;
    const { lesson } = article.dataset;
    const head = element("h2", gettext("Notes for lesson {lesson}, step by step", { lesson }));
    const said = element("p", gettext("The lesson itself is on the sides before this one."));
    const whole = element("section", head, said, element("div", ...before, ...steps, ...(notes ? [notes.cloneNode(true)] : [])));
    whole.className = "notes-side";
    return whole;
  }

  // the floor and the words of a beat, where the lesson's own sides have no room for them, as far as two further sides
  // have: one sheet either way where both its sides are printed
  function withFloor(steps, besides) {
    const told = steps.map((step) => [...untold(step), ...[...step.querySelectorAll(":scope .does > .on-screen")].map(unfolded)]);
    const plans = steps.map((step) => [...step.querySelectorAll(".step-plan .figure")].map(drawn));
    // how steps are run in general gives way first: what this unit says does not
    const long = told.flat().reduce((sum, one) => sum + lines(one), besides) > LINES - STEP_HEADS;
    if (long) told.forEach((all, n) => { told[n] = all.filter((one) => !one.classList.contains("running")); });
    let room = told.reduce((left, one) => left - one.map(lines).reduce((a, b) => a + b, one.length && 1.5), LINES - besides);
    const beats = steps.map((step) => [...step.querySelectorAll(":scope .does > .counts:has(.off-paper)")].map(unfolded));
    const takes = (one, more) => lines(one) + more <= room && ((room -= lines(one) + more), true);
    const spoken = beats.map((all) => all.filter((one) => takes(one, 1.5)));
    const drawnBefore = article.querySelector(".plans") && !article.querySelector(IN_TURNS);
    return steps.map((step, n) => {
      const fitting = drawnBefore ? [] : plans[n].filter((one) => takes(one, PLAN));
      return ofStep(step, [...spoken[n], ...fitting, ...told[n]]);
    });
  }

  // what is new in a step and its own two sides do not tell: its moves, who is left over, who dances what; of a draft not
  // what its author has still to write
  function untold(step) {
    return [1, 2, 3].filter((level) => level > step.dataset.told)
      .flatMap((level) => [...step.querySelectorAll(`:scope > .shown > .told-${level}`)])
      .filter((one) => !one.textContent.includes("✎")).map((one) => one.cloneNode(true));
  }

  // what is read before the lesson, and has made room for the moves
  function aside(section) {
    const [head, ...rest] = section.cloneNode(true).children;
    return element("section", element("h3", head.textContent), ...rest);
  }

  // about how many lines of half a side
  function lines(node) {
    const pieces = [node, ...node.querySelectorAll("p, li, h3, b, dt, dd")].filter((one) => !one.querySelector("p, li, dt, dd"));
    return pieces.reduce((sum, one) => sum + Math.ceil(one.textContent.length / LETTERS), 0);
  }

  function ofStep(step, told) {
    if (!told.length) return null;
    return element("section", step.querySelector("h3").cloneNode(true), ...told);
  }

  function drawn(figure) {
    const copy = figure.cloneNode(true);
    copy.querySelector("details")?.remove();
    // what stands on the page once and is shown here again has the letters of where it stands: here it needs its own
    for (const again of copy.querySelectorAll("svg > use")) {
      const shapes = document.querySelector(`.shapes${again.getAttribute("href")}`);
      if (shapes) again.replaceWith(...shapes.cloneNode(true).childNodes);
    }
    for (const named of copy.querySelectorAll("[id]")) named.removeAttribute("id");
    return copy;
  }

  // as it stands on the page, without its fold
  function unfolded(one) {
    const copy = one.cloneNode(true);
    copy.classList.remove("on-screen");
    const summary = copy.querySelector("summary");
    if (!summary) return copy;
    summary.replaceWith(element("b", summary.firstChild.textContent));
    return element("div", ...copy.childNodes);
  }

  function element(name, ...inside) {
    const found = document.createElement(name);
    found.append(...inside);
    return found;
  }
})();
