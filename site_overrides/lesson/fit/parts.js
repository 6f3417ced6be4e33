// Small pieces of the page that fitting makes, and what it reads of the steps in the page's own words.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;

  form.make = (name, words, ...inside) => {
    const [tag, kind] = name.split(".");
    const element = document.createElement(tag);
    if (kind) element.className = kind;
    if (words) element.textContent = words;
    element.append(...inside);
    return element;
  };

  form.sentence = (words) => words && words.charAt(0).toUpperCase() + words.slice(1) + (/[.?!”"’]$/.test(words) ? "" : ".");

  form.step = (number) => document.getElementById(`at-step-${number}`);

  form.sittings = [gettext("First sitting"), gettext("Second sitting")];

  form.fromTo = (start, end) => gettext("{start} to {end}", { start, end });

  // a number stays beside what it numbers, as on the page
  form.numbered = (number) => `${number}.\u00a0`;

  form.nameOf = (number) => {
    if (number === 0) return gettext("Dance again what you made");
    const link = document.querySelector(`.short-lines a[href="#at-step-${number}"]`);
    return link?.textContent.replace(form.numbered(number), "") ?? gettext("Step {number}", { number });
  };

  // what a line of the page says after its label
  form.said = (line) => {
    if (!line) return "";
    const copy = line.cloneNode(true);
    copy.querySelector(".label, b")?.remove();
    return copy.textContent.trim();
  };

  // the words an element had before it was fitted
  form.asWritten = (element) => (element.dataset.written ??= element.textContent);

  // [{ step, minutes, start, end }], counted from the start of the sitting
  form.timed = (sitting) => {
    let end = 0;
    return sitting.map(({ step, minutes }) => ({ step, minutes, start: end, end: (end += minutes) }));
  };

  // the fewest minutes that a step has today
  form.shortest = (sittings, one, taught) =>
    Math.min(...(taught ? sittings.flat().filter(({ step }) => step === one.number) : [one]).map(({ minutes }) => minutes));

  form.isTaught = (plan, fit) => Boolean(fit) && (plan.sittings.length > 1 || !plan.sentence);
})();
