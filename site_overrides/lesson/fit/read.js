// What a teacher writes in the form: the fit it says, or a plain sentence beside each field. No DOM.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;
  const MINUTES = { least: 1, most: 240, over: gettext("Write 240 minutes or fewer.") };
  const CHANGING = { ...MINUTES, least: 0 };
  const DANCING = { least: 1, most: 120, over: gettext("Write 120 pupils or fewer: one class at a time.") };
  const WATCHING = { ...DANCING, least: 0 };
  const SIDE = { least: 1, most: 99, over: gettext("Write 99 or less.") };

  // `raw` holds the text of each field. Gives { fit, beside }; `fit` is null while anything is beside.
  form.read = (raw) => {
    const beside = {};
    const number = (name, range) => {
      const found = whole(raw[name], range);
      if (typeof found === "number") return found;
      beside[name] = found;
      return NaN;
    };
    const fit = {
      available: number("available", MINUTES),
      changing: number("changing", CHANGING),
      dancing: number("dancing", DANCING),
      watching: number("watching", WATCHING),
      space: raw.space,
    };
    if (fit.changing >= fit.available) {
      const all = bank.sums.minutes(fit.available);
      beside.changing = gettext("Changing takes all {minutes}, so none is left to teach in.", { minutes: all });
    }
    if (raw.space === "m" || raw.space === "s") {
      fit.space = `${number("long", SIDE)}x${number("wide", SIDE)}${raw.space}`;
    }
    return { fit: Object.keys(beside).length ? null : fit, beside };
  };

  // The text of each field for a fit.
  form.written = ({ available, changing, dancing, watching, space }) => {
    const measured = /^(\d+)x(\d+)([ms])$/.exec(space);
    const [, long = "", wide = "", unit = space] = measured ?? [];
    const numbers = [available, changing, dancing, watching].map(String);
    return { available: numbers[0], changing: numbers[1], dancing: numbers[2], watching: numbers[3], space: unit, long, wide };
  };

  // The fit in a code or in a link that carries one; else null.
  form.given = (text) => {
    const carried = /[#&]fit=([^&\s]*)/.exec(text);
    return bank.settings.fromCode((carried ? carried[1] : text).trim().toLowerCase());
  };

  function whole(text, { least, most, over }) {
    const said = text.trim();
    if (!said) return gettext("Write a number, {least} or more.", { least });
    if (/^\d+[.,]\d+$/.test(said)) return gettext("Write a whole number, such as 38.");
    if (!/^[-−+]?\d+$/.test(said)) return gettext("Write it in figures, such as 38.");
    const number = Number(said.replace("−", "-"));
    if (number < least) return gettext("Write {least} or more.", { least });
    return number > most ? over : number;
  }
})();
