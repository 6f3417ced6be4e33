// The dance on the floor, for the fit: loaded when a hall is said, since a lesson that nobody fits has no need of it.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const start = document.currentScript.src;
  let asked = false;

  // what is enough in the hall of the fit; null while nothing is known of the hall, or of the dance
  form.room = (fit, said) => {
    const [halls, least] = [JSON.parse(said.halls), Number(said.least)];
    const hall = fit && (halls[fit.space] ?? bank.sums.sidesOf(fit.space));
    return hall && bank.danceOnFloor ? bank.sums.floor.room(bank.danceOnFloor, fit.dancing, hall, least) : null;
  };

  // loads it once, and then calls `ready`; where it cannot be had, the square metres alone are told
  form.needFloor = (fit, ready) => {
    if (asked || !fit || fit.space === "unknown") return;
    asked = true;
    const load = (src) => new Promise((done, failed) => {
      const script = document.createElement("script");
      Object.assign(script, { src, onload: done, onerror: failed });
      document.head.append(script);
    });
    load(new URL("floor.js", start)).then(() => load("floor.js")).then(ready, (error) => console.error("floor:", error));
  };
})();
