// My class and our hall: taken from the fit form's settings, changed here, and everybody's places worked out anew. Who
// dances at once there, and the pictures part by part, are loaded then: for the class and the hall that it is drawn for,
// the page has them itself.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const start = document.currentScript.src;
  const dance = (bank.dance ||= {});
  const { floor } = bank.sums;
  const LEAST = [2, 4, 4], MOST = [60, 40, 40]; // pupils, and metres either way

  // `changed` is given the paths of the class, at once and after each change
  dance.myClass = (root, data, changed) => {
    const part = (name) => root.querySelector(`[data-${name}]`);
    const fields = ["pupils", "wide", "deep"].map(part);
    const settings = bank.settings;
    const team = part("team");
    let now = "", room = null, loading = false;

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
      room = null;
      team.value = "";
      draw();
      if (floor.room) tell();
      else if (now !== [data.pupils, ...data.hall].join()) load();
    }

    function load() {
      if (loading) return;
      loading = true;
      const script = document.createElement("script");
      Object.assign(script, { src: new URL("room.js", start), onload: tell, onerror: (error) => console.error("room:", error) });
      part("walls").textContent = "";
      document.head.append(script);
    }

    function tell() {
      const [pupils, ...hall] = now.split(",").map(Number);
      room = floor.room(data, pupils, hall, data.least);
      part("walls").textContent = floor.roomInWords(room);
      part("walls").classList.toggle("as-drawn", floor.asDrawn(room));
      offerTeams();
      draw();
    }

    // who dances at once, as the words have it; everybody on the floor is drawn only where that is asked
    function offerTeams() {
      const { teams, waiting, dancing } = room.sharing;
      const some = teams.map((sizes, n) => new Option(floor.teamInWords(n + 1, sizes).slice(0, -1), String(sizes.reduce((a, b) => a + b, 0))));
      if (waiting) some.push(...dancing.map((many) => new Option(gettext("{many} at once", { many }), String(many))));
      team.replaceChildren(...some, new Option(gettext("All {pupils}, as drawn", room), ""));
      team.closest("p").hidden = !some.length && !room.turned && room.stride === 1;
      if (!some.length && room.found) team.prepend(new Option(gettext("All {pupils}", room), String(room.pupils)));
      team.selectedIndex = 0;
    }

    function draw() {
      const [pupils, ...hall] = now.split(",").map(Number);
      const paths = team.value ? floor.drawnIn(data, room, Number(team.value)) : floor.paths(data, pupils, hall);
      changed(paths);
      dance.stills?.(paths, data);
    }

    team.addEventListener("change", draw);

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
