// The parts of the index: each is a script, since a page opened from a folder can load nothing else.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const asked = new Map();
  const waiting = new Map();

  // A part says its own name when it comes: danceUnitBank.finding.take("words-ro", …).
  finding.take = (name, part) => waiting.get(name)?.(part);

  // The part at `address`, asked for once; null where it cannot be had.
  finding.part = (name, address) => {
    if (!asked.has(name)) asked.set(name, new Promise((done) => {
      const script = document.createElement("script");
      waiting.set(name, done);
      script.src = address;
      script.addEventListener("load", () => script.remove());
      script.addEventListener("error", () => done(null));
      document.head.append(script);
    }));
    return asked.get(name);
  };
})();
