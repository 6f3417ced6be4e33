// Printing: a button where the page has a place for one, and at the foot for whom the lesson is fitted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const root = document.documentElement;
  const foot = root.dataset.foot;

  for (const place of document.querySelectorAll('[data-part="print"]:not([data-started])')) {
    try { start(place); place.dataset.started = ""; } catch (error) { console.error("print:", error); }
  }

  function start(place) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = place.dataset.words ?? bank.gettext("Print");
    button.addEventListener("click", () => window.print());
    place.append(button);
    if (!foot || !bank.settings) return;
    bank.settings.onChange(sayForWhom);
    sayForWhom();
  }

  // a slot too short even for two sittings leaves the lesson as it was planned
  function isTaught(fit) {
    return bank.fitForm.isTaught(bank.sums.lessonToday(bank.stepFacts(document.querySelector("article")), fit), fit);
  }

  // the styles print this at the foot of every side
  function sayForWhom() {
    const fit = bank.settings.fit();
    const pupils = fit && fit.dancing + fit.watching;
    root.toggleAttribute("data-fitted", Boolean(fit));
    root.dataset.foot = isTaught(fit)
      ? bank.gettext("{foot}, fitted for {pupils}, {minutes} min", { foot, pupils, minutes: fit.available })
      : foot;
  }
})();
