// Groups of a column that come to stand side by side, and open out behind one another again, and who waits for whom on
// the way: as build_tools/paths/column_by_column.py and going_in_turn.py have it. Columns are { said, together, cells },
// each cell a column and a row.
(() => {
  const { floor } = window.danceUnitBank.sums;
  const ONE = 0.2, BEND = 0.2, MOMENTS = 16;
  const FIRST = [0, 0.5], ALL = [0, 1], LAST = [0.5, 1], CLEAR = [0.6, 0.5, 0.4];

  const most = (cells, at) => 1 + Math.max(...cells.map((cell) => cell[at]));
  const inRows = ([, facing, , , between = null, columns = null, , , free]) =>
    columns !== null && between !== null && !floor.SIDES[facing] && !free;

  // who stands in which column and row; null where that is not said, or they stand otherwise
  floor.columnsOf = (standing, together, places) => {
    if (!inRows(standing)) return null;
    const [across, along] = [0, 1].map((at) => lines(together.map((group) => group.map((one) => places[one][at]))));
    const cells = across.map((column, n) => [column, along[n]]);
    return new Set(cells.map(String)).size === cells.length ? { said: standing[5], together, cells } : null;
  };

  // the sizes of the groups of each column in which a class is put down, from the left; none where they do not belong
  // together
  floor.byColumn = ({ data, legs, parts: [{ letter, wanted }] }) => {
    const { start, size } = data.sections[letter];
    let first = 0;
    const together = floor.groupSizes(legs.length, size, data.sizes).map((many) => Array.from({ length: many }, () => first++));
    const found = data.columned && floor.columnsOf(start, together, wanted);
    if (!found) return [];
    return Array.from({ length: most(found.cells, 0) }, (_, column) => [...found.cells.keys()]
      .filter((n) => found.cells[n][0] === column).sort((a, b) => found.cells[a][1] - found.cells[b][1])
      .map((n) => together[n].length));
  };

  function lines(spans) {
    const found = [];
    let line = -1, end = -Infinity;
    const least = spans.map((span) => Math.min(...span));
    for (const n of [...spans.keys()].sort((a, b) => least[a] - least[b] || a - b)) {
      if (least[n] > end + ONE) line += 1;
      end = Math.max(end, ...spans[n]);
      found[n] = line;
    }
    return found;
  }

  // where the same groups come to stand; null where columns are no columns of before
  floor.dealtAnew = (before, standing, together) => {
    if (!before || !inRows(standing) || String(floor.sized(before.together)) !== String(floor.sized(together))) return null;
    const said = standing[5], rows = most(before.cells, 1);
    const [wider, fewer] = [said / before.said, before.said / said];
    const dealt = (cell) => ({ said, together, cells: before.cells.map(cell) });
    if (wider > 1 && rows === wider) return dealt(([column, row]) => [column * wider + row, 0]);
    if (fewer > 1 && Number.isInteger(fewer) && rows === 1) {
      return dealt(([column]) => [Math.floor(column / fewer), column % fewer]);
    }
    return null;
  };

  // each dancer's place in these columns; `team` is for how many groups a team has spots, or 0
  floor.dealtPlaces = (standing, { together, cells }, usual, team, area, step) => {
    const rows = most(cells, 1);
    const wide = Math.max(most(cells, 0), Math.ceil(team / rows));
    const sizes = Array(wide * rows).fill(usual);
    const number = cells.map(([column, row]) => row * wide + column);
    if (!team) number.forEach((n, group) => { sizes[n] = together[group].length; });
    const { groups, closer } = floor.inCells(standing, sizes, wide, area, step);
    const found = number.map((n, group) =>
      (team ? floor.inSpot(standing, together[group].length, groups[n], step) : groups[n]));
    return { places: floor.byDancer(found, together, [...together.keys()]), closer };
  };

  // when each of those goes, straight, who would meet somebody of their column on the way
  floor.timesInColumns = ([before, now], together, here, places) => {
    const cells = most(now.cells, 1) > 1 ? now.cells : before.cells;
    const found = [];
    for (let column = 0; column < most(cells, 0); column += 1) {
      const mates = cells.flatMap(([at, row], n) => (at === column ? together[n].map((dancer) => [row, dancer]) : []))
        .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
      const ways = mates.map(([, dancer]) => [here[dancer], places[dancer]]);
      timesToGo(ways, mates.map(([row]) => row)).forEach((times, n) => { found[mates[n][1]] = times; });
    }
    return found;
  };

  function timesToGo(ways, rows) {
    const bent = ways.map(([[x, y], [toX, toY]]) => moments((part) => {
      const [dx, dy, out] = [toX - x, toY - y, 2 * BEND * part * (1 - part)];
      return [x + dx * part + dy * out, y + dy * part - dx * out];
    }));
    if (bent.every((one, n) => bent.slice(0, n).every((other) => clear(one, other, CLEAR[0])))) return [];
    // worked out once, though many orders are tried
    const gone = ways.map((way) => new Map([FIRST, ALL, LAST].map(([from, to], n, all) => [all[n], moments((part) => {
      const share = Math.min(1, Math.max(0, (part - from) / (to - from)));
      return [0, 1].map((at) => way[0][at] + (way[1][at] - way[0][at]) * share);
    })])));
    const next = (found, least) => {
      const now = found.length;
      if (now === ways.length) return found.map(([times]) => times);
      for (const times of rows[now] ? [LAST, ALL, FIRST] : [FIRST, ALL, LAST]) {
        const way = gone[now].get(times);
        if (!found.every(([, other]) => clear(way, other, least))) continue;
        const all = next([...found, [times, way]], least);
        if (all) return all;
      }
      return null;
    };
    return CLEAR.reduce((all, least) => all ?? next([], least), null) ?? [];
  }

  const moments = (at) => Array.from({ length: MOMENTS + 1 }, (_, n) => at(n / MOMENTS));
  const clear = (one, other, least) => one.every((point, n) => floor.fine(floor.metres(point, other[n])) >= least);
})();
