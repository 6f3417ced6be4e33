// Where the unit's dance goes on the floor, loaded where a teacher's settings name a hall: a page that nobody fits has
// no need of it.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const start = document.currentScript.src;
  let asked = false;

  // loads it once, and then calls `ready`; where it cannot be had, nothing is told of the floor
  bank.needFloor = (fit, ready) => {
    if (asked || !fit) return;
    asked = true;
    const load = (src) => new Promise((done, failed) => {
      const script = document.createElement("script");
      Object.assign(script, { src, onload: done, onerror: failed });
      document.head.append(script);
    });
    load(new URL("floor.js", start)).then(() => load("floor.js")).then(ready, (error) => console.error("floor:", error));
  };
})();
