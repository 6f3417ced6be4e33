// The fit as a code and as a link to copy, and a colleague's code taken in.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;
  const NO_CODE = gettext("This holds no code. A code looks like 38-7-25-2-half.");
  const BY_HAND = gettext("This browser does not let a page copy. It is marked now: copy it with Ctrl and C.");

  form.share = (root) => {
    const [code, link, given, copied] = ["code", "link", "given", "copied"].map((name) => root.querySelector(`[data-${name}]`));
    const said = root.querySelector("#at-fit-given-said");
    for (const button of root.querySelectorAll("[data-copy]")) {
      button.addEventListener("click", () => copy(root.querySelector(`[data-${button.dataset.copy}]`)));
    }
    given.addEventListener("input", () => {
      const fit = form.given(given.value);
      if (fit) bank.settings.keepFit(fit);
      say(fit ? gettext("Taken in.") : "");
    });
    given.addEventListener("change", () => say(!given.value.trim() ? "" : form.given(given.value) ? gettext("Taken in.") : NO_CODE));

    function say(words) {
      said.textContent = words;
      if (words === NO_CODE) given.setAttribute("aria-invalid", "true");
      else given.removeAttribute("aria-invalid");
    }

    async function copy(field) {
      field.focus();
      field.select();
      try {
        await navigator.clipboard.writeText(field.value);
        copied.textContent = gettext("Copied.");
      } catch {
        copied.textContent = BY_HAND;
      }
    }

    return (fit) => {
      for (const part of root.querySelectorAll("[data-sharing]")) part.hidden = !fit;
      copied.textContent = "";
      code.value = fit ? bank.settings.code(fit) : "";
      link.value = fit ? form.linkFor(window.location.href, code.value) : "";
    };
  };

  // A published edition is reached through its stable entry page, which outlives the edition.
  form.linkFor = (address, code) => `${address.split("#")[0].replace(/\/editions\/[^/]+\//, "/")}#fit=${code}`;
})();
