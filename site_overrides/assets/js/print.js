// Adds a print button where the page has a place for one; without script, the browser's own menu prints.
(() => {
  for (const root of document.querySelectorAll('[data-part="print"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("print:", error); }
  }

  function start(root) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = "Print this lesson on two sides";
    button.addEventListener("click", () => window.print());
    root.append(button);
  }
})();
