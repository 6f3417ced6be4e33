// The finder at rest: shows its form, and fetches the rest of itself when somebody comes near it.
// The page is whole without it: its doors lead to every unit.
(() => {
  const bank = (window.danceUnitBank ||= {});

  for (const form of document.querySelectorAll('[data-part="finder"]:not([data-started])')) {
    try { start(form); form.dataset.started = ""; } catch (error) { console.error("finder:", error); }
  }

  function start(form) {
    let asked = false;
    const wake = () => {
      if (asked) return;
      asked = true;
      const script = document.createElement("script");
      script.src = form.dataset.finding;
      script.addEventListener("load", () => bank.finding.start(form));
      document.head.append(script);
    };
    form.addEventListener("submit", (event) => event.preventDefault());
    for (const near of ["focusin", "pointerover", "input"]) form.addEventListener(near, wake, { once: true });
    form.hidden = false;
    // a question kept in the address, or one that the browser filled in again
    const filled = [...form.querySelectorAll("input, select")].some((field) => field.value);
    if (filled || /[#&](word|year|minutes|room|subject)=/.test(window.location.hash)) wake();
  }
})();
