// How the dancers of a group stand to one another, and a class scattered over a floor: as
// build_tools/paths/within_group.py and scatter.py have them.
(() => {
  const floor = window.danceUnitBank.sums.floor;
  const HEX = [[1, 0], [0.5, 1], [-0.5, 1], [-1, 0], [-0.5, -1], [0.5, -1]];
  const HIGH = Math.sqrt(3) / 2;
  const GOLDEN = (Math.sqrt(5) - 1) / 2;
  const USUAL_SHAPE = 1.8;

  const times = (many, made) => Array.from({ length: many }, (_, n) => made(n));
  const radians = (degrees) => (degrees * Math.PI) / 180;

  // the places of `dancers` in a shape, neighbours `apart` metres from one another, one pair `behind` the other
  floor.shape = (kind, dancers, apart, behind = apart) => {
    if (dancers === 1) return [[0, 0]];
    if (kind === "face to face" || kind === "back to back") {
      return centred(times(dancers, (n) => [(n % 2) * apart, Math.floor(n / 2) * behind]));
    }
    if (kind === "two lines") return centred(times(dancers, (n) => [Math.floor(n / 2) * apart, (n % 2) * apart]));
    if (kind === "one behind another" || kind === "file") return centred(times(dancers, (n) => [0, n * apart]));
    if (kind === "square" || kind === "circle") return ring(dancers, apart, kind === "square");
    if (kind === "cluster") return cluster(dancers, apart);
    if (kind === "diamond") return diamond(dancers, apart);
    if (kind === "semicircle") {
      const radius = apart / 2 / Math.sin(Math.PI / 2 / (dancers - 1));
      const turn = (n) => (Math.PI * n) / (dancers - 1);
      return centred(times(dancers, (n) => [-radius * Math.cos(turn(n)), radius * Math.sin(turn(n))]));
    }
    if (kind === "horseshoe") return horseshoe(dancers, (dancers * apart) / 3, (dancers * apart) / 3);
    if (kind === "V") {
      const across = (n) => (n - (dancers - 1) / 2) * apart * Math.sqrt(0.5);
      return centred(times(dancers, (n) => [across(n), Math.abs(across(n))]));
    }
    return centred(times(dancers, (n) => [n * apart, 0]));
  };

  // evenly along the left, the back and the right of a floor, as horseshoe.py has them
  function horseshoe(dancers, wide, deep) {
    const gap = (2 * deep + wide) / dancers;
    return times(dancers, (n) => {
      const along = (n + 0.5) * gap;
      if (along <= deep) return [-wide / 2, along - deep / 2];
      if (along <= deep + wide) return [along - deep - wide / 2, deep / 2];
      return [wide / 2, deep / 2 - (along - deep - wide)];
    });
  }

  // the same along the walls of an area, `apart` metres from one another where that is said; and how much closer
  floor.alongWalls = (dancers, apart, area) => {
    const gap = (2 * floor.deep(area) + floor.wide(area)) / dancers;
    const part = apart === null ? 1 : Math.min(1, apart / gap);
    const [x, y] = floor.middle(area);
    const places = horseshoe(dancers, floor.wide(area) * part, floor.deep(area) * part);
    return [places.map(([dx, dy]) => [x + dx, y + dy]), Math.min(1, gap / (apart || gap))];
  };

  function centred(points) {
    const half = (at) => {
      const all = points.map((point) => point[at]);
      return (Math.min(...all) + Math.max(...all)) / 2;
    };
    const [x, y] = [half(0), half(1)];
    return points.map((point) => [point[0] - x, point[1] - y]);
  }

  function ring(dancers, apart, square) {
    if (square && dancers > 4) {
      const wide = Math.ceil(Math.sqrt(dancers));
      return centred(times(dancers, (n) => [(n % wide) * apart, Math.floor(n / wide) * apart]));
    }
    const radius = apart / 2 / Math.sin(Math.PI / dancers);
    const first = dancers === 2 ? -90 : -180 / dancers;
    return times(dancers, (n) => {
      const turn = radians(first + (360 * n) / dancers);
      return [radius * Math.sin(turn), -radius * Math.cos(turn)];
    });
  }

  // a point to each wall, round from the front, and those inside; from eight on all along its sides
  function diamond(dancers, apart) {
    let points;
    if (dancers < 4) points = [[0, 0], [0.5, HIGH], [-0.5, HIGH]].slice(0, dancers);
    else if (dancers < 8) {
      const inside = dancers - 4;
      const far = Math.max(Math.sqrt(0.5), (inside + 1) / 2);
      const wide = inside === 2 ? HIGH : Math.max(Math.sqrt(0.5), Math.min(1, inside));
      points = [[0, -far], [wide, 0], [0, far], [-wide, 0]].concat(times(inside, (n) => [0, n - (inside - 1) / 2]));
    } else points = roundADiamond(dancers);
    return centred(points.map(([x, y]) => [x * apart, y * apart]));
  }

  function roundADiamond(dancers) {
    const far = Math.ceil(dancers / 4) * Math.sqrt(0.5);
    const corners = [[0, -far], [far, 0], [0, far], [-far, 0]];
    return corners.concat(corners.flatMap(([x, y], side) => {
      const [toX, toY] = corners[(side + 1) % 4];
      const more = Math.floor((dancers - 1 - side) / 4);
      return times(more, (n) => (n + 1) / (more + 1)).map((part) => [x + (toX - x) * part, y + (toY - y) * part]);
    }));
  }

  function cluster(dancers, apart) {
    const found = [[0, 0]];
    for (let round = 1; found.length < dancers; round += 1) {
      HEX.forEach(([x, y], corner) => {
        const to = HEX[(corner + 1) % 6];
        for (let step = 0; step < round; step += 1) {
          const part = step / round;
          found.push([apart * round * (x + (to[0] - x) * part), apart * round * HIGH * (y + (to[1] - y) * part)]);
        }
      });
    }
    return found.slice(0, dancers);
  }

  // `many` places in an area, one after another each near the one before
  floor.scattered = (many, area) => {
    const laid = (x, y) => [area[0] + x * floor.wide(area), area[1] + y * floor.deep(area)];
    const unit = inASquare(many);
    const across = unit.map(([x, y]) => laid(x, y));
    if (many < 2) return across;
    return floor.most([across, unit.map(([x, y]) => laid(y, x))], (points) => [floor.nearestTwo(points)]);
  };

  function inASquare(many) {
    const points = times(many, (n) => [(n + 0.5) / many, (n * GOLDEN + 0.5 / many) % 1]);
    const strips = Math.max(1, Math.floor(Math.sqrt(many * USUAL_SHAPE) / 2 + 0.5));
    return times(strips, (strip) => {
      const inside = points.slice(Math.floor((strip * many) / strips), Math.floor(((strip + 1) * many) / strips));
      return inside.sort((a, b) => (strip % 2 ? b[1] - a[1] : a[1] - b[1]));
    }).flat();
  }
})();
