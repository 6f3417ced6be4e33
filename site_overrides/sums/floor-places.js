// Where a class stands: formation, groups and distances as places in a hall, as build_tools/paths/places.py has
// them. A standing is [formation, facing, within, apart, groups apart, columns]; what is not said is null.
(() => {
  const floor = window.danceUnitBank.sums.floor;
  const USUAL_APART = 2, HALVINGS = 24;
  const STOOD_LEVEL = ["one behind another", "file", "face to face", "back to back"];
  const OWN_SHAPE = {
    line: "line", rows: "line", "two lines": "two lines", file: "one behind another", circle: "circle",
    semicircle: "semicircle", V: "V", cluster: "cluster",
  };

  // the places of each group, in the order of its sizes
  floor.slots = (standing, sizes, area, step) => {
    const quarters = (floor.SIDES[standing[1]] || 0) / 90;
    const found = facingFront(standing, sizes, floor.turnedArea(area, -quarters), step);
    return found.map((group) => group.map((point) => floor.turned(point, quarters)));
  };

  function facingFront(standing, sizes, area, step) {
    const [formation, , , apart = null] = standing;
    if (eachItsOwn(standing, sizes)) {
      const between = (apart ?? USUAL_APART) * step;
      const kind = kindOf(standing, sizes);
      return ofGroups(standing, level(kind, sizes.map((size) => floor.shape(kind, size, between))), area, step, between);
    }
    const dancers = sizes.reduce((sum, one) => sum + one, 0);
    if (formation === "scattered") return dealt(spacedOut(floor.scattered(dancers, area), apart, area, step), sizes);
    if (["rows", "pairs", "small groups"].includes(formation)) {
      return ofGroups(standing, Array.from({ length: dancers }, () => [[0, 0]]), area, step, 0);
    }
    const kind = OWN_SHAPE[formation];
    return dealt(fitted(floor.shape(kind, dancers, forAll(kind, dancers, apart, area, step)), area, [0, 0]), sizes);
  }

  // groups of other sizes with their first places level, not centred
  function level(kind, inside) {
    if (!STOOD_LEVEL.includes(kind)) return inside;
    const fronts = inside.map((group) => Math.min(...group.map(([, y]) => y)));
    const front = Math.min(...fronts);
    return inside.map((group, n) => group.map(([x, y]) => [x, y - (fronts[n] - front)]));
  }

  function eachItsOwn([formation, , within, apart, between, columns], sizes) {
    if (Math.max(...sizes) === 1) return false;
    if (["pairs", "small groups", "rows"].includes(formation)) return true;
    if (formation === "scattered") return (within ?? apart ?? null) !== null;
    return Boolean(within || columns || (between ?? null) !== null);
  }

  function kindOf([formation, facing, within], sizes) {
    if (within) return within;
    if (OWN_SHAPE[formation]) return OWN_SHAPE[formation];
    const mostly = (size) => sizes.filter((one) => one === size).length * 2 >= sizes.length;
    if (mostly(2)) return facing === "partner" || facing === "centre" ? "face to face" : "side by side";
    return mostly(4) ? "square" : "circle";
  }

  const span = (points, at) => {
    const all = points.map((point) => point[at]);
    return Math.max(...all) - Math.min(...all);
  };

  function forAll(kind, dancers, apart, area, step) {
    if (apart !== null) return apart * step;
    if (kind === "cluster") return step;
    const across = floor.shape(kind, dancers, 1);
    const [wide, deep] = [span(across, 0), span(across, 1)];
    const room = Math.min(wide ? floor.wide(area) / wide : Infinity, deep ? floor.deep(area) / deep : Infinity);
    return Math.min(room, USUAL_APART * step);
  }

  function ofGroups([formation, , , , between = null, columns = null], inside, area, step, clear) {
    const many = inside.length;
    const most = (at) => Math.max(0, ...inside.flat().map((point) => 2 * Math.abs(point[at])));
    const size = [most(0), most(1)];
    if (formation === "scattered") return apartFrom(inside, size, clear, area);
    const tried = columns !== null
      ? [Math.min(columns, many)]
      : [...new Set(inside.map((_, n) => Math.ceil(many / (n + 1))))].sort((a, b) => a - b);
    const metres = between === null ? null : between * step;
    return floor.most(
      tried.map((count) => laid(inside, grid(many, count, size, metres, clear, area), area)),
      (groups) => [floor.nearestTwo(groups.flat()), slack(groups.flat(), area)],
    );
  }

  // scattered groups, their shapes as large as they may be and still keep clear
  function apartFrom(inside, [wide, deep], clear, area) {
    const most = Math.max(0, ...inside.flat().map(([x, y]) => Math.hypot(x, y)));
    const middles = (part) => floor.scattered(inside.length, less(area, (wide / 2) * part, (deep / 2) * part));
    const keepsClear = (part) =>
      wide * part <= floor.wide(area) && deep * part <= floor.deep(area) &&
      floor.nearestTwo(middles(part)) >= (2 * most + clear) * part;
    let [low, high] = keepsClear(1) ? [1, 1] : [0, 1];
    for (let n = 0; n < HALVINGS && low < high; n += 1) {
      const half = (low + high) / 2;
      if (keepsClear(half)) low = half;
      else high = half;
    }
    return laid(inside.map((one) => one.map(([x, y]) => [x * low, y * low])), middles(low), area);
  }

  function less(area, across, along) {
    const [x, y] = [Math.min(across, floor.wide(area) / 2), Math.min(along, floor.deep(area) / 2)];
    return [area[0] + x, area[1] + y, area[2] - x, area[3] - y];
  }

  function grid(many, columns, size, between, clear, area) {
    const rows = Math.ceil(many / columns);
    const across = between === null ? Math.max(floor.wide(area) / columns, size[0] + clear) : size[0] + between;
    const along = between === null ? Math.max(floor.deep(area) / rows, size[1] + clear) : size[1] + between;
    const middle = floor.middle(area);
    return Array.from({ length: many }, (_, n) => {
      const [row, column] = [Math.floor(n / columns), n % columns];
      const here = Math.min(columns, many - row * columns);
      return [middle[0] + (column - (here - 1) / 2) * across, middle[1] + (row - (rows - 1) / 2) * along];
    });
  }

  function laid(inside, middles, area) {
    const points = inside.flatMap((group, n) => group.map(([x, y]) => [middles[n][0] + x, middles[n][1] + y]));
    return dealt(fitted(points, area, floor.middle(area)), inside.map((group) => group.length));
  }

  // the points in the middle of the area, drawn closer round it where they do not fit
  function fitted(points, area, around) {
    const [x0, y0] = floor.middle(area);
    const far = (at) => Math.max(...points.map((point) => Math.abs(point[at] - around[at])));
    const [wide, deep] = [far(0), far(1)];
    const across = wide ? Math.min(1, floor.wide(area) / 2 / wide) : 1;
    const along = deep ? Math.min(1, floor.deep(area) / 2 / deep) : 1;
    return points.map(([x, y]) => [x0 + (x - around[0]) * across, y0 + (y - around[1]) * along]);
  }

  function spacedOut(points, apart, area, step) {
    const nearest = floor.nearestTwo(points);
    if (apart === null || !(apart * step > 0 && apart * step < nearest && nearest < Infinity)) return points;
    const [x0, y0] = floor.middle(area);
    const closer = (apart * step) / nearest;
    return points.map(([x, y]) => [x0 + (x - x0) * closer, y0 + (y - y0) * closer]);
  }

  function slack(points, area) {
    return floor.fine(-Math.max(span(points, 0) / floor.wide(area), span(points, 1) / floor.deep(area)));
  }

  function dealt(points, sizes) {
    let first = 0;
    return sizes.map((size) => points.slice(first, (first += size)));
  }
})();
