// Who comes too near a wall, and where all would stand closer than the dance asks: as build_tools/paths/leaving.py and
// squeezed.py tell it. `paths` are those of floor.paths.
(() => {
  const bank = window.danceUnitBank;
  const { floor } = bank.sums;
  const SLIGHT = 0.05, SEATED = 1, AT_AN_END = 1.5;
  const LOOKED_AT = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

  // how many dancers in each counted section come into the border along a wall or, where part of the class is `watched`,
  // to those who watch, in one row along a wall or in rows at its ends
  floor.leaving = (paths, watched) => {
    const { hall: [wide, deep], data: { lined, waiting } } = paths;
    const long = lined.includes("front") || lined.includes("back");
    const ends = waiting?.ends && lined.length ? (long ? ["left", "right"] : ["front", "back"]) : null;
    const near = watched ? ends ?? lined : [];
    const free = (side) => (near.includes(side) ? (ends ? AT_AN_END : SEATED) : floor.BORDER) - SLIGHT;
    const [left, right] = [free("left") - wide / 2, wide / 2 - free("right")];
    const [front, back] = [free("front") - deep / 2, deep / 2 - free("back")];
    const out = (leg) => (leg.bend ? LOOKED_AT : [0, 1]).some((part) => {
      const [x, y] = bank.paths.during(leg, leg.start + (leg.end - leg.start) * part);
      return x < left || x > right || y < front || y > back;
    });
    // where one part begins before another is over, a way is of the one that began first
    const partAt = (moment) => paths.parts.find(({ begins, lasts }) => begins <= moment && moment < begins + lasts) ?? paths.parts.at(-1);
    return paths.parts.flatMap((part) => {
      if (!part.letter || !paths.data.sections[part.letter].danced) return [];
      const dancers = paths.legs.filter((legs) => legs.some((leg) => partAt(leg.start) === part && out(leg))).length;
      return dancers ? [{ letter: part.letter, dancers }] : [];
    });
  };

  // the letters of the sections whose places have to be drawn together to fit the hall
  floor.squeezed = ({ parts }) => {
    const close = parts.filter(({ letter, closer }) => letter && floor.fine(closer) < floor.FITS);
    return [...new Set(close.map(({ letter }) => letter))];
  };
})();
