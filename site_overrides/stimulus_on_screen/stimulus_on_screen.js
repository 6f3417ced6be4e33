// Full screen: a button for each thing shown, where the browser can.
(() => {
  const { gettext } = window.danceUnitBank;

  for (const part of document.querySelectorAll('[data-part="shown"]:not([data-started])')) {
    try { start(part); part.dataset.started = ""; } catch (error) { console.error("show:", error); }
  }

  function start(part) {
    if (!part.requestFullscreen) return;
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = gettext("Full screen");
    button.addEventListener("click", () => part.requestFullscreen().catch(() => { button.hidden = true; }));
    part.append(button);
    part.addEventListener("click", () => { if (document.fullscreenElement === part) document.exitFullscreen(); });
  }
})();
