// The floor for each pupil beside what is recommended.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  const metresInWords = (tenths) => {
    const [whole, part] = [Math.floor(tenths / 10), tenths % 10];
    return part ? `${whole}.${part} m²` : `${whole} m²`;
  };

  // The floor named full, half or classroom, whose sides `halls` tells, or 12x8m in metres, or 14x9s in big
  // steps of about 1 metre (common practice, no source); null where it is not known.
  sums.squareMetres = (space, halls) => {
    const sides = sums.sidesOf(space);
    if (sides) return sides[0] * sides[1];
    return Object.hasOwn(halls, space) ? halls[space][0] * halls[space][1] : null;
  };

  // the two sides of a floor that is measured, in metres; null for another
  sums.sidesOf = (space) => /^([1-9][0-9]?)x([1-9][0-9]?)[ms]$/.exec(space)?.slice(1).map(Number) ?? null;

  // What pupils dancing at once have on a floor of `metres`; `least` is what is recommended for each.
  // `tenths` are of a square metre, rounded down.
  sums.floorSpace = (pupils, metres, least) => {
    const dancing = Math.max(1, pupils);
    const tenths = Math.floor((10 * metres) / dancing);
    const enough = metres >= least * dancing;
    return {
      tenths,
      each: metresInWords(tenths),
      least,
      enough,
      holds: Math.floor(metres / least),
    };
  };
})();
