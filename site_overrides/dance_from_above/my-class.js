// My class and our hall: taken from the fit form's settings, changed here, and everybody's places worked out anew.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const dance = (bank.dance ||= {});
  const { floor } = bank.sums;
  const LEAST = [2, 4, 4], MOST = [60, 40, 40]; // pupils, and metres either way

  // `changed` is given the paths of the class, at once and after each change
  dance.myClass = (root, data, changed) => {
    const part = (name) => root.querySelector(`[data-${name}]`);
    const fields = ["pupils", "wide", "deep"].map(part);
    const settings = bank.settings;
    let now = "";

    function wanted() {
      const fit = settings.fit();
      const size = fit && (fit.space in data.halls ? data.halls[fit.space] : bank.sums.sidesOf(fit.space));
      return fit ? [fit.dancing, ...(size || data.hall)] : [data.pupils, ...data.hall];
    }

    function show(values) {
      const kept = values.map((value, n) => Math.min(MOST[n], Math.max(LEAST[n], Math.round(value))));
      kept.forEach((value, n) => { fields[n].value = value; });
      if (kept.join() === now) return;
      now = kept.join();
      const paths = floor.paths(data, kept[0], kept.slice(1));
      const room = floor.room(data, kept[0], kept.slice(1), data.least);
      part("walls").textContent = floor.roomInWords(room);
      part("walls").classList.toggle("as-drawn", floor.asDrawn(room));
      changed(paths);
    }

    for (const [n, field] of fields.entries()) {
      field.addEventListener("change", () => {
        const values = fields.map((one, at) => Number(one.value) || Number(now.split(",")[at]));
        show(values);
        keep(n);
      });
    }
    settings.onChange(() => show(wanted()));
    show(wanted());

    // what the fit form knows is changed there too; what it does not know lasts as long as the page
    function keep(n) {
      const fit = settings.fit();
      const [pupils, wide, deep] = now.split(",").map(Number);
      if (fit) settings.keepFit({ ...fit, ...(n ? { space: `${wide}x${deep}m` } : { dancing: pupils }) });
    }
  };
})();
