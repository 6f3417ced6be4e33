// Runs scripts of a page without a page. Arguments: the files of the scripts, in order. Each line of the
// input is a list of [name, arguments]; each line of the output is the list of what they gave, or of {error}.
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { runInThisContext } from "node:vm";

const nothing = () => null;
globalThis.window = globalThis;
globalThis.location = { hash: "", href: "" };
globalThis.addEventListener = nothing;
globalThis.document = { querySelector: nothing, querySelectorAll: () => [] };
for (const file of process.argv.slice(2)) runInThisContext(readFileSync(file, "utf8"), file);

// step facts of plain attributes, as bank.stepFacts reads them off the elements of a page
globalThis.danceUnitBank.stepFactsOf = (all) =>
  globalThis.danceUnitBank.stepFacts({ querySelectorAll: () => all.map((dataset) => ({ dataset })) });

// where everybody is at each of some moments, so that all the paths of a dance cross over once
const { paths } = globalThis.danceUnitBank;
paths.atEach = (all, moments) => moments.map((moment) => paths.at(all, moment));

// what is typed, with the little words as a list, since a set is no JSON
const { finding } = globalThis.danceUnitBank;
finding.readTypedOf = (text, passedOver) => finding.readTyped(text, new Set(passedOver));

function answer([name, given]) {
  try {
    const found = name.split(".").reduce((part, one) => part[one], globalThis.danceUnitBank);
    const gave = found(...given);
    // bytes of a file, as text
    return gave instanceof Uint8Array ? Buffer.from(gave).toString("base64") : gave;
  } catch (error) {
    return { error: String(error) };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(JSON.parse(line).map(answer)));
}
