// A further side for the printer: what each step says besides that the lesson's own two sides have no room for.
// It is made of what stands on the page when that is printed, so that the page does not carry it twice.
(() => {
  const article = document.querySelector("[data-lesson]");
  let made = null;

  window.addEventListener("beforeprint", () => {
    made?.remove();
    made = side();
    if (made) article.append(made);
  });
  window.addEventListener("afterprint", () => made?.remove());

  function side() {
    const steps = [...article.querySelectorAll(".step")].map(ofStep).filter(Boolean);
    const notes = article.querySelector("section.notes");
    if (!steps.length && !notes) return null;
    const { lesson } = article.dataset;
    const head = element("h2", `Notes for lesson ${lesson}, step by step`);
    const said = element("p", "A further side. The lesson itself is on the sides before it.");
    const whole = element("section", head, said, element("div", ...steps, ...(notes ? [notes.cloneNode(true)] : [])));
    whole.className = "notes-side";
    return whole;
  }

  function ofStep(step) {
    const told = [...step.querySelectorAll(":scope .does > .on-screen")].map(unfolded);
    if (!told.length) return null;
    return element("section", step.querySelector("h3").cloneNode(true), ...told);
  }

  // as it stands on the page, without its fold
  function unfolded(one) {
    const copy = one.cloneNode(true);
    copy.classList.remove("on-screen");
    const summary = copy.querySelector("summary");
    if (!summary) return copy;
    summary.replaceWith(element("b", summary.firstChild.textContent));
    return element("div", ...copy.childNodes);
  }

  function element(name, ...inside) {
    const found = document.createElement(name);
    found.append(...inside);
    return found;
  }
})();
