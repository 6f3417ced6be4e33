// What "Fit this lesson" asks and where it answers: of no use without script, so it is written here, once for all lessons.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const ASKED = [
    ["available", gettext("Minutes you really have")],
    ["changing", gettext("Minutes lost to changing")],
    ["dancing", gettext("How many dance")],
    ["watching", gettext("How many can’t dance")],
  ];
  const WHERE = [
    ["unknown", gettext("Don’t know")],
    ["full", gettext("Full hall")],
    ["half", gettext("Half hall")],
    ["classroom", gettext("Classroom")],
    ["s", gettext("I paced it in big steps")],
    ["m", gettext("I know it in metres")],
  ];
  const HEADING = gettext("Fit this lesson");
  const PLACE = gettext("Where");
  const CODE = gettext("Your code");
  const COPY_CODE = gettext("Copy the code");
  const LINK = gettext("A link to this lesson, fitted");
  const COPY_LINK = gettext("Copy a link");
  const GIVEN = gettext("Have a code from a colleague?");
  const AS_PLANNED = gettext("As planned");
  const SIDES = [["long", gettext("Long")], ["wide", gettext("Wide")]];

  for (const root of document.querySelectorAll('[data-part="fit"]:not([data-started])')) {
    root.insertAdjacentHTML("beforeend", form(root.closest("[data-lesson]").dataset.minutes, root.dataset.pupils));
  }

  function form(minutes, pupils) {
    const first = { available: minutes, changing: 0, dancing: pupils, watching: 0 };
    return `<h2 class="aside">${HEADING}</h2>
<div class="fit-fields">${ASKED.map(([name, label]) => number(name, label, ` value="${first[name]}"`)).join("\n")}
<p class="field"><label for="at-fit-space">${PLACE}</label>
<select id="at-fit-space" data-field="space">${WHERE.map(([name, label]) => `<option value="${name}">${label}</option>`).join("")}</select></p>
${SIDES.map(([name, label]) => number(name, label, "", " data-sides hidden")).join("\n")}</div>
<div class="fit-results" data-results></div>
<div class="fit-share">
${shared("code", CODE, COPY_CODE)}
${shared("link", LINK, COPY_LINK)}
<p class="field"><label for="at-fit-given">${GIVEN}</label>
<input id="at-fit-given" data-given autocomplete="off" spellcheck="false" aria-describedby="at-fit-given-said">
${beside("given")}</p>
</div>
<p class="quiet" data-copied role="status"></p>
<p><button type="button" data-as-planned>${AS_PLANNED}</button></p>`;
  }

  function number(name, label, value, more = "") {
    return `<p class="field"${more}><label for="at-fit-${name}">${label}</label>
<input id="at-fit-${name}" data-field="${name}"${value} inputmode="numeric" autocomplete="off" aria-describedby="at-fit-${name}-said">
${beside(name)}</p>`;
  }

  function shared(name, label, copy) {
    return `<p class="field" data-sharing hidden><label for="at-fit-${name}">${label}</label>
<input id="at-fit-${name}" data-${name} readonly> <button type="button" data-copy="${name}">${copy}</button></p>`;
  }

  function beside(name) {
    return `<span class="beside" id="at-fit-${name}-said" aria-live="polite"></span>`;
  }
})();
