// Fit my lesson: what the teacher writes changes the page at once; "As planned" takes it back.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;
  const WAIT = 500; // milliseconds of rest before half-written numbers are spoken of
  const AS_BEFORE = gettext("The page stays as it was until this is mended.");

  for (const root of document.querySelectorAll('[data-part="fit"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("fit:", error); }
  }

  function start(root) {
    const { settings, sums } = bank;
    const article = root.closest("[data-lesson]");
    const facts = bank.stepFacts(article);
    const fields = new Map([...root.querySelectorAll("[data-field]")].map((one) => [one.dataset.field, one]));
    const planned = values();
    const results = root.querySelector("[data-results]");
    const said = article.querySelector("[data-fit-said]");
    const showOnPage = form.onPage(article);
    const showCode = form.share(root);
    let waiting = 0;

    root.addEventListener("input", ({ target }) => { if (target.dataset.field) take(WAIT); });
    root.addEventListener("change", ({ target }) => { if (target.dataset.field) take(0); });
    root.querySelector("[data-as-planned]").addEventListener("click", () => {
      fill(planned);
      settings.keepFit(null);
    });
    for (const way of document.querySelectorAll('a[href="#at-fit"]')) {
      way.addEventListener("click", (event) => { event.preventDefault(); open(); });
    }
    settings.onChange(show);
    root.hidden = false;
    show();
    if (window.location.hash === "#at-fit") open();

    function open() {
      root.open = true;
      root.scrollIntoView();
      fields.get("available").focus({ preventScroll: true });
      fields.get("available").select();
    }

    function values() {
      return Object.fromEntries([...fields].map(([name, one]) => [name, one.value]));
    }

    function fill(texts) {
      for (const [name, one] of fields) one.value = texts[name];
      beside({});
      sides();
    }

    function sides() {
      const measured = ["m", "s"].includes(fields.get("space").value);
      for (const part of root.querySelectorAll("[data-sides]")) part.hidden = !measured;
    }

    function take(rest) {
      sides();
      clearTimeout(waiting);
      const { fit, beside: faults } = form.read(values());
      if (!fit) {
        waiting = setTimeout(beside, rest, faults);
        return;
      }
      beside({});
      if (settings.code(fit) !== settings.code(settings.fit())) settings.keepFit(fit);
    }

    function beside(faults) {
      clearTimeout(waiting);
      const first = Object.keys(faults)[0];
      for (const [name, one] of fields) {
        const place = root.querySelector(`#at-fit-${name}-said`);
        if (!place) continue;
        const words = name in faults ? `${faults[name]}${name === first ? ` ${AS_BEFORE}` : ""}` : "";
        if (place.textContent !== words) place.textContent = words;
        if (words) one.setAttribute("aria-invalid", "true");
        else one.removeAttribute("aria-invalid");
      }
    }

    function show() {
      const fit = settings.fit();
      bank.needFloor(fit, show);
      const plan = sums.lessonToday(facts, fit);
      if (fit && settings.code(form.read(values()).fit) !== settings.code(fit)) fill(form.written(fit));
      if (!fit && Object.values(planned).join() !== Object.values(values()).join()) fill(planned);
      showOnPage(plan, fit);
      showCode(fit);
      results.replaceChildren(...((fit && form.results?.(facts, plan, fit, root.dataset)) || []));
      const words = [fit ? inShort(plan, fit) : "", settings.trouble].filter(Boolean).join(" ");
      if (said.textContent !== words) said.textContent = words;
    }

    function inShort(plan, fit) {
      const { available, changing, dancing } = fit;
      if (!form.isTaught(plan, fit)) {
        return gettext("{minutes} to teach.", { minutes: sums.minutes(available - changing) }) + ` ${plan.sentence}`;
      }
      const said = { available, changing, dancing, minutes: sums.minutes(plan.minutes) };
      return plan.sittings.length > 1
        ? gettext("Fitted to {available} minutes with {changing} of changing, and {dancing} dancing: two sittings of {minutes}.", said)
        : gettext("Fitted to {available} minutes with {changing} of changing, and {dancing} dancing: {minutes} to teach.", said);
    }
  }
})();
