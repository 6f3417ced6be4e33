// What a card has only with script: its clock, its buttons, and the step that recalls a first sitting. Written here, once for
// all cards, before the card starts.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const UNDO = gettext("Undo"), START = gettext("Start"), BACK = gettext("Back"), MORE = gettext("More"), NEXT = gettext("Next");
  const IF = gettext("If …"), PAUSE = gettext("Pause"), MINUTE = gettext("+1 minute"), CATCH_UP = gettext("Make up time");
  const SITTING = gettext("Which sitting"), TIME = gettext("Time and trouble"), STEPS = gettext("Steps");
  const WHERE = gettext("Each pupil where they were"), AGAIN = gettext("Dance again what you made"), PUPILS = gettext("Pupils");
  const MADE = gettext("Dance what was made in the first sitting: once to remember it, once to make it clear.");

  const CLOCK = `<div data-clock hidden>
<p class="finish" data-finish></p>
<p class="pace"><svg class="pace-bar" viewBox="0 0 200 14" aria-hidden="true" focusable="false"><path class="rule" d="M0 7H200" stroke="currentColor"/><rect class="pace-block" data-bar x="100" y="2" width="0" height="10" fill="currentColor"/><path d="M100 0V14" stroke="currentColor" stroke-width="2"/></svg> <span data-pace></span></p>
</div>`;
  const CHANGED = `<div class="changed"><p class="change" role="status" data-change></p> <button type="button" data-undo hidden>${UNDO}</button></div>`;
  const BEGIN = `<div class="sittings" data-sittings role="group" aria-label="${SITTING}" hidden></div>
<p class="start" hidden data-start-line><button type="button" data-start>${START}</button> <span data-would-finish></span></p>`;
  const RECAP = `<section class="step-card" data-step="0" data-grouping="alone" aria-labelledby="at-card-0" hidden>
<p class="where"><span data-place></span> · <span data-lasts></span> · <span data-groups>${WHERE}</span></p>
<h2 id="at-card-0" tabindex="-1">${AGAIN}</h2>
<p class="task"><b>${PUPILS}</b> ${MADE}</p>
<p class="after"><b>${NEXT}</b> <span data-after></span></p>
</section>`;
  const BAR = `<div class="bar">
<div class="tools" role="group" aria-label="${TIME}" data-tools hidden>
<button type="button" data-if>${IF}</button>
<button type="button" data-pause>${PAUSE}</button>
<button type="button" data-minute>${MINUTE}</button>
<button type="button" data-catch-up>${CATCH_UP}</button>
</div>
<nav class="turn" aria-label="${STEPS}" data-turn hidden>
<button type="button" data-back>${BACK}</button>
<button type="button" data-more hidden>${MORE}</button>
<button type="button" data-next>${NEXT}</button>
</nav>
</div>`;

  for (const root of document.querySelectorAll('[data-part="card"]:not([data-started])')) {
    const put = (where, place, html) => root.querySelector(where).insertAdjacentHTML(place, html);
    put(".top", "beforeend", CLOCK);
    put(".top", "afterend", CHANGED);
    put("[data-plan]", "afterend", BEGIN);
    put(".cards", "beforeend", RECAP);
    root.insertAdjacentHTML("beforeend", BAR);
  }
})();
