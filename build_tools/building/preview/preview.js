// Only in the preview: asks once a second whether anything changed, shows the problems beside
// the page and loads it anew. No page elsewhere can read the answer.
(() => {
  const where = new URL("preview-state.json", document.currentScript.src);
  let number = null;
  function show(problems) {
    let box = document.getElementById("preview-problems");
    if (!box) {
      box = document.createElement("pre");
      box.id = "preview-problems";
      box.setAttribute("role", "status");
      document.body.append(box);
    }
    if (box.textContent !== problems) box.textContent = problems;
    box.hidden = !problems;
  }
  async function ask() {
    try {
      const answer = await fetch(where, { cache: "no-store" });
      if (!answer.ok) throw new Error(`${answer.status}`);
      const state = await answer.json();
      show(state.problems);
      if (number !== null && state.number !== number) location.reload();
      number = state.number;
    } catch {
      show("`watch` has ended, so this is the page it made last. Start it and open the address it prints.");
    }
    setTimeout(ask, 1000);
  }
  ask();
})();
