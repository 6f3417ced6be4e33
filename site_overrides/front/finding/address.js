// The question in the address, so that a link, a reload and the way back find it again.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});

  finding.fromAddress = (hash) => {
    const found = {};
    for (const part of hash.replace(/^#/, "").split("&")) {
      const [name, ...value] = part.split("=");
      if (!value.length) continue;
      try { found[name] = decodeURIComponent(value.join("=").replaceAll("+", " ")); } catch { /* a stray % asks nothing */ }
    }
    return found;
  };

  finding.toAddress = (asked) => Object.entries(asked).filter(([, value]) => value)
    .map(([name, value]) => `${name}=${encodeURIComponent(value).replaceAll("%20", "+")}`).join("&");

  finding.keepInAddress = (asked) => {
    const text = finding.toAddress(asked);
    const address = text ? `#${text}` : window.location.href.split("#")[0];
    try { window.history.replaceState(null, "", address); } catch (error) { console.error("finder:", error); }
  };
})();
