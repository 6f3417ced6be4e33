// Keys of a keyboard and of a clicker. A button, a link or a field that has the focus keeps its own keys.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const DEEDS = {
    ArrowRight: "next", PageDown: "next", ArrowDown: "next",
    ArrowLeft: "back", PageUp: "back", ArrowUp: "back",
    " ": "space", Escape: "escape",
  };
  const TYPING = "input, select, textarea";
  const PRESSED = `${TYPING}, button, summary, a[href]`;

  // `deeds` are functions by name: next, back, space, escape. One that gives false leaves the key alone.
  hall.keys = (deeds) => {
    document.addEventListener("keydown", (event) => {
      const deed = deeds[DEEDS[event.key]];
      if (!deed || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
      if (event.target.closest?.(event.key === " " ? PRESSED : TYPING)) return;
      if (scrolls(event.key)) return;
      if (event.repeat) { event.preventDefault(); return; }
      if (deed() !== false) event.preventDefault();
    });
  };

  // up and down read on where there is more to read that way
  function scrolls(key) {
    const { scrollTop, scrollHeight, clientHeight } = document.documentElement;
    if (key === "ArrowDown") return scrollTop + clientHeight < scrollHeight - 1;
    return key === "ArrowUp" && scrollTop > 0;
  }
})();
