// Where a class stands: formation, groups and distances as places in a hall, as build_tools/paths/places.py has
// them. A standing is [formation, facing, within, apart, groups apart, columns, the side that nobody faces, where
// larger groups stand: 0 and 1 at the left and right of the front row, 2 and 3 of the back, steps free by side, where a
// third stands, in how many clusters, 1 where each group faces one way]; what is not said is null.
(() => {
  const floor = window.danceUnitBank.sums.floor;
  const USUAL_APART = 2, HALVINGS = 24, USUAL_CLASS = 30;
  floor.FITS = 0.9; // as places.py says why
  const STOOD_LEVEL = ["one behind another", "file", "face to face", "back to back", "semicircle", "horseshoe"];
  const OWN_SHAPE = {
    line: "line", rows: "line", "two lines": "two lines", file: "one behind another", circle: "circle",
    semicircle: "semicircle", horseshoe: "horseshoe", V: "V", cluster: "cluster",
  };

  // the size that most groups have, the larger of two
  floor.commonest = (sizes) => {
    const count = (size) => sizes.filter((one) => one === size).length;
    return sizes.reduce((best, one) => ((count(one) - count(best) || one - best) > 0 ? one : best));
  };

  // { groups, closer }: the places of each group, in the order of its sizes, and by how much all are drawn together
  // to fit, 1 for not at all; a team stands in as many columns as leave most floor round it
  floor.slots = (standing, sizes, area, step, team = false) => {
    const quarters = (floor.SIDES[standing[1]] || 0) / 90;
    const { groups, closer } = facingFront(standing, sizes, floor.turnedArea(area, -quarters), step, team);
    const found = groups.map((group) => group.map((point) => floor.turned(point, quarters)));
    if (standing[0] === "scattered" || (standing[8]?.front ?? null) === null) return { groups: found, closer };
    // the first row where the dance has it from the front wall
    const nearer = Math.min(...found.flat().map(([, y]) => y)) - area[1];
    return { groups: found.map((group) => group.map(([x, y]) => [x, y - nearer])), closer };
  };

  // the shape of a group of `size` among such of a `usual` size, as if the front were ahead
  floor.ownShape = (standing, size, usual, step) =>
    ownShape(kindOf(standing, [usual, usual]), size, [usual], (standing[3] ?? USUAL_APART) * step, USUAL_APART * step, standing[9]);

  function facingFront(standing, sizes, area, step, team) {
    const [formation, , , apart = null] = standing;
    if (eachItsOwn(standing, sizes)) {
      const between = (apart ?? USUAL_APART) * step;
      const kind = kindOf(standing, sizes);
      const inside = sizes.map((size) => ownShape(kind, size, sizes, between, USUAL_APART * step, standing[9]));
      return ofGroups(standing, level(kind, inside), area, step, between, kind, team);
    }
    const dancers = sizes.reduce((sum, one) => sum + one, 0);
    if (formation === "scattered" && standing[10]) {
      const { groups, closer } = inClusters(standing[10], dancers, (apart ?? USUAL_APART) * step, area);
      return dealt([groups.flat(), closer], sizes);
    }
    if (formation === "scattered") return dealt(spacedOut(floor.scattered(dancers, area), apart, area, step), sizes);
    if (["rows", "pairs", "small groups"].includes(formation)) {
      return ofGroups(standing, Array.from({ length: dancers }, () => [[0, 0]]), area, step, 0);
    }
    const kind = OWN_SHAPE[formation];
    if (kind === "horseshoe") return dealt(floor.alongWalls(dancers, apart === null ? null : apart * step, area), sizes);
    return dealt(fitted(floor.shape(kind, dancers, forAll(kind, dancers, apart, area, step)), area, [0, 0]), sizes);
  }

  // a group's shape; where the odd one among pairs stands, as places.py says
  function ownShape(kind, size, sizes, between, near, third) {
    if (third && size === 3 && sizes.includes(2)) {
      const [one, other] = floor.shape(kind, 2, between);
      const [x, y] = [0, 1].map((at) => (one[at] + other[at]) / 2);
      if (third === "between") return [one, [x, y], other];
      if (third !== "behind") return [[one[0], y - near / 2], other, [one[0], y + near / 2]];
      return [one, other, [x, y + near]];
    }
    const pairs = kind === "face to face" || kind === "back to back";
    if (!pairs || between <= near) return floor.shape(kind, size, between);
    if (size === 3 && sizes.includes(2)) return floor.shape(kind, size, between, near);
    if (size === 5 && sizes.includes(4) && between >= 2 * near) {
      const four = floor.shape(kind, 4, between);
      return [...four, [four[0][0], 0]];
    }
    return floor.shape(kind, size, between);
  }

  // the order in which groups are laid from the front: what goes further back than most last, with nobody behind it
  function deepestLast(kind, inside, third) {
    const order = inside.map((_, n) => n);
    if (!STOOD_LEVEL.includes(kind) && (third ?? "between") === "between") return order;
    const sizes = inside.map((one) => one.length);
    const deep = inside.map((one) => floor.fine(span(one, 1)));
    const least = deep[sizes.indexOf(floor.commonest(sizes))];
    return order.sort((a, b) => Math.max(deep[a], least) - Math.max(deep[b], least));
  }

  // the order in which groups are laid where a unit says at which end of a row larger ones stand
  function largerAt(end, sizes, columns) {
    const usual = floor.commonest(sizes), many = sizes.length;
    const every = sizes.map((_, n) => n);
    const last = Math.floor((many - 1) / columns) * columns;
    const row = every.filter((n) => (end > 1 ? n >= last : n < columns));
    const kept = [...(end % 2 ? row.slice().reverse() : row), ...every.filter((n) => !row.includes(n))];
    const order = [];
    for (const n of [...every].sort((a, b) => (sizes[a] <= usual) - (sizes[b] <= usual) || a - b)) {
      const place = sizes[n] > usual ? kept[0] : Math.min(...kept);
      order[place] = n;
      kept.splice(kept.indexOf(place), 1);
    }
    return order;
  }

  // groups of other sizes with their first places level, not centred
  function level(kind, inside) {
    if (!STOOD_LEVEL.includes(kind)) return inside;
    const fronts = inside.map((group) => Math.min(...group.map(([, y]) => y)));
    const front = Math.min(...fronts);
    return inside.map((group, n) => group.map(([x, y]) => [x, y - (fronts[n] - front)]));
  }

  // groups of these sizes in so many columns, row by row as they come
  floor.inCells = (standing, sizes, columns, area, step) => {
    const between = (standing[3] ?? USUAL_APART) * step, kind = kindOf(standing, sizes);
    const inside = level(kind, sizes.map((size) => ownShape(kind, size, sizes, between, USUAL_APART * step, standing[9])));
    return laid(inside, inColumns(inside, columns, null, standing[4] * step, between, area, 0), area);
  };

  const eachItsOwn = (floor.eachItsOwn = ([formation, , within, apart, between, columns], sizes) => {
    if (Math.max(...sizes) === 1) return false;
    if (["pairs", "small groups", "rows"].includes(formation)) return true;
    if (formation === "scattered") return (within ?? apart ?? null) !== null;
    return Boolean(within || columns || (between ?? null) !== null);
  });

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

  function ofGroups(standing, inside, area, step, clear, kind, team) {
    const [formation, , , , between = null, columns = null, , larger = null, , third] = standing;
    const many = inside.length;
    const most = (at) => Math.max(0, ...inside.flat().map((point) => 2 * Math.abs(point[at])));
    if (formation === "scattered") return apartFrom(inside, [most(0), most(1)], clear, area);
    const tried = columns !== null
      ? columnsTried(columns, inside.map((group) => group.length))
      : [...new Set(inside.map((_, n) => Math.ceil(many / (n + 1))))].sort((a, b) => a - b);
    const metres = between === null ? null : between * step;
    return floor.most(
      tried.map((count) => {
        const order = larger !== null ? largerAt(larger, inside.map((group) => group.length), count)
          : count < many ? deepestLast(kind, inside, third) : inside.map((_, n) => n);
        const ordered = order.map((n) => inside[n]);
        const last = larger === null || larger > 1 ? 0 : 1 - 2 * larger; // -1 for the left, 1 for the right
        const found = laid(ordered, inColumns(ordered, count, most, metres, clear, area, last), area);
        return { ...found, groups: order.map((_, n) => found.groups[order.indexOf(n)]) };
      }),
      ({ groups, closer }) => columns !== null
        ? [floor.fine(closer), team ? margin(groups.flat(), area) : 0]
        : [floor.nearestTwo(groups.flat()), slack(groups.flat(), area)],
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
    const drawn = inside.map((one) => one.map(([x, y]) => [x * low, y * low]));
    return { ...laid(drawn, middles(low), area), closer: low };
  }

  // in loose clusters of nearly a size, twice as far from one another as inside
  function inClusters(many, dancers, between, area) {
    const sizes = Array.from({ length: many }, (_, n) => Math.floor((dancers + n) / many)).filter(Boolean);
    const inside = sizes.map((size) => floor.shape("cluster", size, between));
    const most = (at) => Math.max(0, ...inside.flat().map((point) => 2 * Math.abs(point[at])));
    return apartFrom(inside, [most(0), most(1)], 2 * between, area);
  }

  function less(area, across, along) {
    const [x, y] = [Math.min(across, floor.wide(area) / 2), Math.min(along, floor.deep(area) / 2)];
    return [area[0] + x, area[1] + y, area[2] - x, area[3] - y];
  }

  floor.rowsOfAClass = (columns, size) => Math.ceil(Math.ceil(USUAL_CLASS / size) / columns);

  // in how many columns groups of these sizes may stand where a dance says how many, that first
  function columnsTried(said, sizes) {
    const many = sizes.length;
    const rows = floor.rowsOfAClass(said, floor.commonest(sizes));
    const most = Math.min(said, many);
    const fewer = Array.from({ length: most - 1 }, (_, n) => most - 1 - n);
    return [most, ...fewer.filter((count) => Math.ceil(many / count) <= rows)];
  }

  // the middles of groups, row by row from the front; what in_columns.py says of them
  function inColumns(inside, columns, most, between, clear, area, last) {
    const rows = Array.from({ length: Math.ceil(inside.length / columns) }, (_, row) =>
      inside.slice(row * columns, (row + 1) * columns));
    const [x, y] = floor.middle(area);
    if (between === null) {
      const across = Math.max(floor.wide(area) / rows[0].length, most(0) + clear);
      const along = Math.max(floor.deep(area) / rows.length, most(1) + clear);
      return rows.flatMap((row, n) => {
        const aside = ((rows[0].length - row.length) / 2) * across * last;
        return row.map((_, column) =>
          [x + aside + (column - (row.length - 1) / 2) * across, y + (n - (rows.length - 1) / 2) * along]);
      });
    }
    const whole = rows.filter((row) => row.length === columns);
    const many = rows.at(-1).length;
    const moved = !last || whole.length === rows.length ? null
      : rows.at(-1).map((_, n) => (last < 0 ? n : columns - many + n));
    const behind = rowsBehind(rows, between, moved);
    const lines = whole.length ? whole[0].map((_, n) => whole.map((row) => row[n])) : [];
    moved?.forEach((column, n) => lines[column].push(rows.at(-1)[n]));
    return rows.flatMap((row, n) => {
      let places;
      if (row.length === columns) places = beside(lines, 0, between);
      else if (moved === null) places = beside(row.map((one) => [one]), 0, between);
      else {
        const every = beside(lines, 0, between);
        places = moved.map((column) => every[column]);
      }
      return places.map((across) => [x + across, y + behind[n]]);
    });
  }

  // where rows lie from front to back; one that has moved along is behind those before it only
  function rowsBehind(rows, between, moved) {
    if (moved === null || rows.length === 1) return beside(rows, 1, between);
    const found = beside([...rows.slice(0, -2), moved.map((n) => rows.at(-2)[n]), rows.at(-1)], 1, between);
    const ends = rows.flatMap((row, n) => row.flat().map((point) => found[n] + point[1]));
    const middle = (Math.min(...ends) + Math.max(...ends)) / 2;
    return found.map((along) => along - middle);
  }

  // where lines of groups lie along an axis, so many metres between them, round the middle
  function beside(lines, axis, between) {
    const along = lines.map((line) => line.flat().map((point) => point[axis]));
    const [least, most] = [along.map((all) => Math.min(...all)), along.map((all) => Math.max(...all))];
    const found = [0];
    for (let n = 1; n < lines.length; n += 1) found.push(found[n - 1] + most[n - 1] + between - least[n]);
    const middle = (least[0] + found.at(-1) + most.at(-1)) / 2;
    return found.map((one) => one - middle);
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
    const closer = Math.min(across, along);
    return [points.map(([x, y]) => [x0 + (x - around[0]) * across, y0 + (y - around[1]) * along]), closer];
  }

  function spacedOut(points, apart, area, step) {
    const nearest = floor.nearestTwo(points);
    if (apart === null || apart === 0 || nearest === Infinity) return [points, 1];
    const [x0, y0] = floor.middle(area);
    const closer = (apart * step) / nearest;
    if (closer >= 1) return [points, 1 / closer];
    return [points.map(([x, y]) => [x0 + (x - x0) * closer, y0 + (y - y0) * closer]), 1];
  }

  function slack(points, area) {
    return floor.fine(-Math.max(span(points, 0) / floor.wide(area), span(points, 1) / floor.deep(area)));
  }

  function margin(points, area) {
    return floor.fine(Math.min(floor.wide(area) - span(points, 0), floor.deep(area) - span(points, 1)));
  }

  function dealt([points, closer], sizes) {
    let first = 0;
    return { groups: sizes.map((size) => points.slice(first, (first += size))), closer };
  }
})();
