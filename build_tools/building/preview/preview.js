// Only in the preview: asks once a second whether anything changed, shows the problems beside
// the page and loads it anew. A script element is used because the pages allow no other request.
(() => {
  let number = null;
  window.bankPreview = (state) => {
    show(state.problems);
    if (number !== null && state.number !== number) location.reload();
    number = state.number;
  };
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
  function ask() {
    const script = document.createElement("script");
    script.src = "/preview-state.js?" + Date.now();
    script.onload = script.onerror = () => { script.remove(); setTimeout(ask, 1000); };
    document.head.append(script);
  }
  ask();
})();
