// node sheets.cjs PACKAGES PROGRAM SCHEMA ROOT: what the program writes as JSON is accepted by the schema
// of sheets; held by the independent validator ajv to sheets of every kind that the schema names. That the
// schema refuses anything at all is held to the same sheets with one thing wrong.
const fs = require("fs");
const path = require("path");
const { spawnSync } = require("child_process");

const [packages, program, schemaFile, root] = process.argv.slice(2);
const Ajv = require(path.join(packages, "node_modules/ajv/dist/2020"));
const schema = JSON.parse(fs.readFileSync(schemaFile, "utf8"));
const validate = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true }).compile(schema);

const event = "harvest-supper/event.yaml";
const lamb = "harvest-supper/lamb-leg.yaml";
const commands = [
  ["card", lamb],
  ["card", event, "--measures", "both", "--cost"],
  ["card", lamb, "--batches", "1,4"],
  ["card", event, "--labels"],
  ["card", event, "--buffet"],
  ["cost", lamb],
  ["cost", event],
  ["cost", event, "--section", "lines"],
  ["plates", event],
  ["quote", event],
  ["quote", event, "--client"],
  ["quote", "harvest-supper/held.yaml", "--invoice"],
  ["quote", event, "--why", "Food"],
  ["quote", event, "--guest-table", "60,90"],
  ["quote", event, "--movers", "10 %"],
  ["quote", event, "--floor", "20 %", "--draws", "100"],
  ["budget", event, "--price", "80", "--margin", "20 %", "--dish",
    "lamb leg with a garlic and rosemary rub", "--cut", "lamb leg, bone-in", "--portion", "6 oz"],
  ["order", event],
  ["order", event, "--delivery-notes"],
  ["timeline", event],
  ["day", "mill-wedding/event.yaml"],
  ["yield", "lamb leg, bone-in, roasted", "--buy", "15 lb"],
  ["worksheet", "worksheets/lamb-shoulder.yaml"],
  ["worksheet", "worksheets/lamb-shoulder.yaml", "worksheets/beef-rib-with-answers.yaml"],
  ["trials", "worksheets/pork-shoulder-trials.yaml"],
  ["roast", "--kind", "whole cut", "--weight", "7.5 lb", "--oven", "325 F", "--until", "130 F"],
  ["lethality", "log.csv", "--food", "meat"],
  ["measure", "2 1/4 cups", "g", "--of", "flour, all-purpose"],
  ["tables", "safety"],
  ["check", event],
];

let good = true;
function complain(text) {
  good = false;
  console.log(text);
}

const folder = fs.mkdtempSync(path.join(require("os").tmpdir(), "platewright-sheets-"));
fs.cpSync(path.join(root, "examples"), folder, { recursive: true });
fs.writeFileSync(path.join(folder, "log.csv"), "minutes,F\n0,120\n10,130\n20,140\n30,146\n40,146\n50,146\n");
const held = fs.readFileSync(path.join(folder, event), "utf8") +
  "invoice: {invoice number: 2027-118, invoice date: 2027-10-11}\n";
fs.writeFileSync(path.join(folder, "harvest-supper/held.yaml"), held);

const sheets = [];
for (const words of commands) {
  const said = words.join(" ");
  const run = spawnSync(program, [...words, "--format", "json"], { cwd: folder, encoding: "utf8" });
  if (!run.stdout) {
    complain(`${said}: no sheet: ${run.stderr ?? run.error}`);
    continue;
  }
  const sheet = JSON.parse(run.stdout);
  if (!validate(sheet)) complain(`${said}: ${JSON.stringify(validate.errors.slice(0, 3))}`);
  sheets.push({ said, sheet });
}
fs.rmSync(folder, { recursive: true });

const met = new Set(sheets.map(({ sheet }) => sheet.sheet));
for (const kind of schema.properties.sheet.enum) {
  if (!met.has(kind)) complain(`no sheet of the kind ${kind} was met: add a command that writes one`);
}

// The first row of the first table that has one.
function firstRow(sheet) {
  return Object.values(sheet.arrays).flat()[0];
}

const wrongs = [
  (sheet) => delete sheet.version,
  (sheet) => delete sheet.arrays,
  (sheet) => (sheet.version += 1),
  (sheet) => (sheet.sheet = "a kind that is none"),
  (sheet) => (sheet.more = "x"),
  (sheet) => (sheet.sources = "x"),
  (sheet) => (sheet.arrays["Not A Key"] = []),
  (sheet) => (firstRow(sheet).x = 1.5),
  (sheet) => (firstRow(sheet).x = []),
  (sheet) => (firstRow(sheet).x = { exact: "1 1/2", shown: "1.5" }),
  (sheet) => (firstRow(sheet).x = { exact: "3/2" }),
  (sheet) => (firstRow(sheet).x = { exact: "3/2", shown: "1.5", more: "x" }),
];
let refused = 0;
for (const { said, sheet } of sheets.filter(({ sheet }) => firstRow(sheet) !== undefined)) {
  wrongs.forEach((wrong, number) => {
    const copy = structuredClone(sheet);
    wrong(copy);
    if (validate(copy)) complain(`${said}: accepted with fault ${number} in it`);
    else refused += 1;
  });
}
console.log(`${sheets.length} sheets of ${met.size} kinds accepted, ${refused} faults refused`);
process.exit(good ? 0 : 1);
