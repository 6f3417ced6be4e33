// A screen that is too full gives way: its words first, as far as the back of the hall reads them, then its picture.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const LEAST = 0.046, SMALLEST = 0.86; // of the screen's height; of the size of words
  const PICTURE = 0.31, LOW = 600; // of the screen's height; a lower window is a screen that somebody has zoomed

  const over = () => document.documentElement.scrollHeight - window.innerHeight;

  // Anew whenever a step comes up, the window changes or words come in; `shown` gives what is up.
  hall.wallFits = (root, shown) => {
    const fit = () => {
      const step = shown();
      const drawing = step?.querySelector(":scope > .strip[data-now] svg, :scope > .beside");
      step?.style.removeProperty("--words");
      if (drawing) Object.assign(drawing.style, { maxHeight: "", display: "" });
      if (!step || window.innerHeight < LOW || over() <= 0) return;
      smaller(step);
      const most = (drawing?.getBoundingClientRect().height ?? 0) - over();
      const least = PICTURE * window.innerHeight;
      if (drawing && over() > 0) drawing.style.maxHeight = `${Math.floor(Math.max(most, least))}px`;
      // what every lesson starts from has been up alone, and stands here for ornament
      if (drawing?.matches(".beside") && over() > 0) drawing.style.display = "none";
    };
    new ResizeObserver(fit).observe(root);
    window.addEventListener("resize", fit);
    return fit;
  };

  function smaller(step) {
    const task = step.querySelector("[data-line][data-now]");
    const size = parseFloat(getComputedStyle(task).fontSize);
    const least = Math.max(SMALLEST, (LEAST * window.innerHeight) / size);
    for (let words = 0.98; words > least && over() > 0; words -= 0.02) step.style.setProperty("--words", words);
  }
})();
