// One button opens easier and harder for every step, or folds them; without script each opens alone.
(() => {
  const { gettext } = window.danceUnitBank;
  const OPEN = gettext("Show easier and harder for every step");
  const FOLD = gettext("Fold easier and harder for every step");

  for (const root of document.querySelectorAll('[data-part="unfold"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("unfold:", error); }
  }

  function start(root) {
    const parts = [...document.querySelectorAll("details.range")];
    if (!parts.length) return;
    const button = document.createElement("button");
    const name = () => { button.textContent = parts.every((part) => part.open) ? FOLD : OPEN; };
    button.type = "button";
    button.addEventListener("click", () => {
      const open = !parts.every((part) => part.open);
      for (const part of parts) part.open = open;
    });
    for (const part of parts) part.addEventListener("toggle", name);
    name();
    root.append(button);
  }
})();
