// Drives the system's Firefox: each line of input is a command as JSON, each line of output its answer.
import readline from "node:readline";
import puppeteer from "puppeteer-core";

const [TRIES, WAIT_MS] = [200, 50];
// the discard port: every address but this computer's own leads to nothing; or one who listens to all of them
const NOWHERE = 9;
const listener = process.argv[2];
const port = Number(listener ?? NOWHERE);
const browser = await puppeteer.launch({
  browser: "firefox",
  executablePath: process.env.BANK_FIREFOX,
  headless: true,
  defaultViewport: null,
  extraPrefsFirefox: {
    // no process is started before a page asks for it, which took a fifth of the browser's start
    "dom.ipc.processPrelaunch.enabled": false,
    "dom.ipc.processPrelaunch.fission.number": 0,
    "media.rdd-process.enabled": false,
    "media.utility-process.enabled": false,
    "network.process.enabled": false,
    "network.proxy.type": 1,
    "network.proxy.http": "127.0.0.1",
    "network.proxy.http_port": port,
    "network.proxy.ssl": "127.0.0.1",
    "network.proxy.ssl_port": port,
    "network.proxy.no_proxies_on": listener ? "" : "127.0.0.1",
    "network.proxy.allow_hijacking_localhost": Boolean(listener),
  },
});

let context = null;
let page = null;
let said = [];

function listen() {
  window.violations = [];
  document.addEventListener("securitypolicyviolation", (event) => {
    window.violations.push(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}`);
  });
}

async function resize(width) {
  // an older Firefox takes the size, and does not know that a screen can be turned
  await page.setViewport({ width, height: 900 }).catch((error) => {
    if (!String(error).includes("setScreenOrientationOverride")) throw error;
  });
  for (let left = TRIES; left > 0; left -= 1) {
    if ((await page.evaluate("innerWidth")) === width) return;
    await new Promise((done) => setTimeout(done, WAIT_MS));
  }
  throw new Error(`the window does not get ${width} px wide`);
}

// a page that leads on to another one at once gives up its own loading
async function open({ address }) {
  await page.goto(address).catch((error) => {
    if (!String(error).includes("NS_BINDING_ABORTED")) throw error;
  });
}

// the library's own waiting runs words as script, which the pages' policy forbids an older Firefox
async function the(what) {
  const found = await page.$(what);
  if (!found) throw new Error(`nothing on the page is ${what}`);
  return found;
}

const commands = {
  // a fresh reader: nothing that another one kept is there
  async reader({ width }) {
    if (context) await context.close();
    context = await browser.createBrowserContext();
    page = await context.newPage();
    await resize(width);
    await page.evaluateOnNewDocument(listen);
    said = [];
    page.on("console", (message) => said.push(`${message.type()}: ${message.text()}`));
    page.on("pageerror", (fault) => said.push(`uncaught: ${fault}`));
  },
  open,
  resize: ({ width }) => resize(width),
  evaluate: ({ words }) => page.evaluate(words),
  click: ({ what }) => the(what).then((one) => one.click()),
  async fill({ what, words }) {
    const field = await the(what);
    await field.evaluate((one) => one.select());
    await field.type(words);
  },
  said: () => said,
};

for await (const line of readline.createInterface({ input: process.stdin })) {
  const { command, ...given } = JSON.parse(line);
  let answer;
  try {
    answer = { gives: (await commands[command](given)) ?? null };
  } catch (error) {
    answer = { failed: String(error) };
  }
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}
await browser.close();
