// What a step plays of the unit's recording, a button for each stretch: on the lesson, its card and its wall. The page's own
// player plays it, so that one thing sounds at a time, and its slider goes with it.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const style = new URL("../css/music.css", document.currentScript.src).href;
  const STOP = gettext("Stop"), FROM_START = gettext("Play from the start"), ELSEWHERE = gettext("Start elsewhere");
  const REFUSED = gettext("This device does not play the recording from there. Try the player, or another browser.");
  const STEPS = ":is(.step, .step-card, .wall-step)[data-played]:not([data-can-play])";
  const OFF = 1.5; // seconds that a player may be away from where it was sent
  // a card has its player from the lesson of which it is made
  const audio = document.querySelector("audio") ?? bank.lessonOfCard?.querySelector("audio");
  let now = null, due = 0;

  // Anew when a card has its steps, which may be after this has run.
  bank.music = () => {
    const card = document.querySelector(".card-root .step-card")?.closest(".card-root");
    if (card && !card.contains(audio)) keepPlayer(card);
    for (const step of document.querySelectorAll(STEPS)) {
      try { offer(step); step.dataset.canPlay = ""; } catch (error) { console.error("music:", error); }
    }
    follow();
  };
  if (!audio) { bank.music = () => {}; return; }
  bank.stopMusic = stop;

  const sheet = Object.assign(document.createElement("link"), { rel: "stylesheet", href: style });
  document.head.append(sheet);
  for (const name of ["timeupdate", "playing", "seeked", "ratechange"]) audio.addEventListener(name, watch);
  audio.addEventListener("loadedmetadata", () => { if (now) audio.currentTime = now.start; });
  audio.addEventListener("playing", () => { if (now && !now.sounds) arrived(now); });
  audio.addEventListener("pause", () => { if (audio.paused) release(); });
  audio.addEventListener("ended", release);
  // whoever moves the slider has it play on from there
  audio.addEventListener("seeking", () => { if (now?.sounds && !within(now)) release(); });
  new MutationObserver(follow).observe(document.body, { subtree: true, attributeFilter: ["data-now"] });
  bank.music();

  function offer(step) {
    const [first, ...others] = JSON.parse(step.dataset.played).map(([start, ...more]) => stretch(start, more));
    const wall = step.matches(".wall-step"); // there the slider is beside it
    const group = make("div", "played"), said = make("span", "quiet");
    said.setAttribute("role", "status");
    group.append(button(first, said));
    if (others.length > Number(wall)) {
      const fold = make("details", ""), summary = make("summary", "", ELSEWHERE);
      summary.append(make("span", "aside", `, ${step.dataset.step}`));
      fold.append(summary, ...others.map((one) => button(one, said)));
      group.append(fold);
    }
    group.append(said);
    if (wall) { group.dataset.of = step.dataset.step; audio.after(group); }
    else (step.querySelector(".you") ?? [...step.querySelectorAll(".task")].at(-1)).after(group);
  }

  function stretch(start, more) {
    const end = typeof more[0] === "number" ? more.shift() : null;
    return { start, end, words: words(start, end, more[0]) };
  }

  function words(start, end, part) {
    if (end === null) return FROM_START;
    const told = { from: clock(start), to: clock(end), part };
    return part ? gettext("Play {from} to {to} ({part})", told) : gettext("Play {from} to {to}", told);
  }

  function clock(seconds) {
    const whole = Math.round(seconds);
    return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  }

  function button(one, said) {
    const pressed = make("button", "", one.words);
    pressed.type = "button";
    Object.assign(one, { pressed, said, sounds: false });
    pressed.addEventListener("click", () => { if (now === one) stop(); else play(one); });
    return pressed;
  }

  function play(one) {
    release();
    bank.hall?.stopCount?.();
    now = one;
    Object.assign(one, { sounds: false, tried: false });
    one.said.textContent = "";
    one.time = make("span", "");
    one.time.setAttribute("aria-hidden", "true");
    one.pressed.replaceChildren(STOP, " ", one.time);
    one.pressed.dataset.sounds = "";
    audio.currentTime = one.start;
    audio.play().catch(() => { if (now === one) refused(); });
  }

  // sent once more, where a player did not hear it before it had the file
  function arrived(one) {
    if (Math.abs(audio.currentTime - one.start) < OFF) { one.sounds = true; return; }
    if (one.tried) { refused(); return; }
    one.tried = true;
    audio.currentTime = one.start;
  }

  function refused() {
    const { said } = now;
    stop();
    said.textContent = REFUSED;
  }

  function stop() {
    release();
    audio.pause();
  }

  function release() {
    clearTimeout(due);
    if (!now) return;
    delete now.pressed.dataset.sounds;
    now.pressed.textContent = now.words;
    now = null;
  }

  const within = ({ start, end }) => audio.currentTime > start - OFF && audio.currentTime < (end ?? Infinity) + OFF;

  // stops where the stretch ends; a player tells its time too seldom to go by that alone
  function watch() {
    clearTimeout(due);
    if (!now?.sounds) { if (now && !audio.seeking && !audio.paused) arrived(now); return; }
    now.time.textContent = clock(Math.floor(audio.currentTime));
    if (now.end === null || audio.paused) return;
    const left = (now.end - audio.currentTime) / audio.playbackRate;
    if (left <= 0) stop();
    else due = setTimeout(watch, left * 1000);
  }

  // what is played for a step stops when another comes up: its button is gone
  function follow() {
    for (const group of document.querySelectorAll(".played[data-of]")) {
      group.hidden = !document.querySelector(`.wall-step[data-step="${group.dataset.of}"][data-now]`);
    }
    if (now && !now.pressed.checkVisibility()) stop();
  }

  // the rest of the recording, for who wants to hear another stretch of it
  function keepPlayer(card) {
    const panel = make("details", "panel"), player = audio.closest("figure");
    const label = player.querySelector(".label");
    panel.append(make("summary", "", label.textContent), player);
    label.remove();
    card.querySelector("[data-trouble]").before(panel);
  }

  function make(name, kind, text = "") {
    const element = document.createElement(name);
    if (kind) element.className = kind;
    element.textContent = text;
    return element;
  }
})();
