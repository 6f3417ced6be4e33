// Keeps the lesson as one file: the page as it came, with its styles and typefaces inside and no script.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const start = document.currentScript.src;
  const PICTURES = ".shown-picture img";
  const { lesson } = document.querySelector("[data-lesson]").dataset;
  const came = document.documentElement.cloneNode(true);

  for (const root of document.querySelectorAll('[data-part="keep"]:not([data-started])')) {
    try { offer(root); root.dataset.started = ""; } catch (error) { console.error("keep:", error); }
  }

  function offer(root) {
    root.querySelector("button").addEventListener("click", async () => {
      await loaded("keptStyle", new URL("kept-style.js", start));
      if (came.querySelector(PICTURES)) await loaded("keptPictures", new URL(`lesson-${lesson}-pictures.js`, location));
      save(whole(came.cloneNode(true)), location.pathname.split("/").pop().replace(".html", "-to-keep.html"));
    });
    root.hidden = false;
  }

  // a script, since a page opened from a folder can read no other kind of file
  function loaded(name, address) {
    if (bank[name]) return Promise.resolve();
    return new Promise((done, failed) => {
      const script = document.createElement("script");
      script.src = address.href;
      script.addEventListener("load", done);
      script.addEventListener("error", failed);
      document.head.append(script);
    });
  }

  function whole(root) {
    for (const one of root.querySelectorAll("script, [data-beside], [hidden], link")) {
      if (!one.matches('link[href^="data:"]')) one.remove();
    }
    for (const link of root.querySelectorAll('a:not([href^="#"])')) link.replaceWith(...link.childNodes);
    for (const picture of root.querySelectorAll(PICTURES)) picture.setAttribute("src", bank.keptPictures[picture.getAttribute("src")]);
    const policy = root.querySelector('meta[http-equiv="Content-Security-Policy"]');
    policy.setAttribute("content", bank.keptStyle.policy);
    const style = document.createElement("style");
    style.textContent = bank.keptStyle.style;
    policy.after("\n", style);
    root.setAttribute("data-whole", "");
    return `<!doctype html>\n${root.outerHTML}\n`;
  }

  function save(html, name) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([html], { type: "text/html" }));
    link.download = name;
    link.click();
    // the browser has to have read it before it is let go
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }
})();
