// node validate.cjs PACKAGES PROGRAM SCHEMAS ROOT: a file that the program accepts must be accepted
// by its schema. Held by the independent validator ajv to all examples, to the files of every case of
// tests/golden and tests/bad_input, and to examples in which one value at a time was changed. That the
// schemas refuse anything at all is held to keys that no file has.
const fs = require("fs");
const os = require("os");
const path = require("path");
const { spawnSync } = require("child_process");

const [packages, program, schemas, root] = process.argv.slice(2);
const Ajv = require(path.join(packages, "node_modules/ajv/dist/2020"));
const yaml = require(path.join(packages, "node_modules/yaml"));

// In the order in which the program looks for what a file is.
const kinds = ["recipe", "larder", "event", "tables", "prices", "worksheet", "trials", "price list"];
const ajv = new Ajv({ strict: true, allowUnionTypes: true, allErrors: true });
const validators = new Map();
for (const kind of kinds) {
  const file = path.join(schemas, kind.replace(" ", "-") + ".json");
  validators.set(kind, ajv.compile(JSON.parse(fs.readFileSync(file, "utf8"))));
}

const counts = { files: 0, accepted: 0, refused: 0, refusedByBoth: 0 };
let good = true;
function complain(text) {
  good = false;
  console.log(text);
}

// A key that only the reader knows.
function advice(errors) {
  const unlisted = errors.filter((error) => error.keyword === "additionalProperties");
  if (unlisted.length === 0) return "";
  const keys = unlisted.map((error) => error.params.additionalProperty).join(", ");
  return `; give a key that has no meaning yet a line in its table in src/files/keys, then build ` +
    `renew_keys: ${keys}`;
}

function kindOf(value) {
  const isMap = value !== null && typeof value === "object" && !Array.isArray(value);
  return isMap ? kinds.find((kind) => kind in value) : undefined;
}

// The file's value as an editor sees it; undefined where it is no YAML.
function valueOf(text) {
  try {
    return yaml.parse(text, { maxAliasCount: 0, logLevel: "silent" });
  } catch {
    return undefined;
  }
}

// A price list is read for a larder.
function accepts(folder, name, kind, larders) {
  const files = kind === "price list" ? [name, ...larders] : [name];
  return spawnSync(program, ["check", ...files], { cwd: folder }).status === 0;
}

function hold(where, folder, name, larders) {
  const value = valueOf(fs.readFileSync(path.join(folder, name), "utf8"));
  const kind = kindOf(value);
  if (kind === undefined) return;
  const validate = validators.get(kind);
  const bySchema = validate(value);
  counts.files += 1;
  if (accepts(folder, name, kind, larders)) {
    counts.accepted += 1;
    if (!bySchema) {
      complain(`${where}: the program accepts it, the schema of "${kind}" does not: ` +
        ajv.errorsText(validate.errors) + advice(validate.errors));
    }
  } else {
    counts.refused += 1;
    if (!bySchema) counts.refusedByBoth += 1;
  }
}

function isYaml(name) {
  return name.endsWith(".yaml");
}

function larderNames(folder) {
  return fs.readdirSync(folder).filter(isYaml).filter((name) =>
    kindOf(valueOf(fs.readFileSync(path.join(folder, name), "utf8"))) === "larder");
}

function holdFolder(where, folder) {
  const larders = larderNames(folder);
  for (const name of fs.readdirSync(folder).filter(isYaml)) {
    hold(`${where}: ${name}`, folder, name, larders);
  }
}

// The files of a case: `file NAME:` to `end of file`. Those with escapes are not for editors.
function holdCase(file) {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "platewright-schema-"));
  let name;
  let lines = [];
  for (const line of fs.readFileSync(file, "utf8").split("\n")) {
    const begins = /^file ([\w.-]+):$/.exec(line);
    if (name === undefined && begins) {
      name = begins[1];
      lines = [];
    } else if (line === "end of file" && name !== undefined) {
      fs.writeFileSync(path.join(folder, name), lines.join("\n") + "\n");
      name = undefined;
    } else if (name !== undefined) {
      lines.push(line);
    }
  }
  holdFolder(path.basename(file), folder);
  fs.rmSync(folder, { recursive: true });
}

// The same numbers every time.
let state = 20270906;
function draw(below) {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return Math.floor((state / 4294967296) * below);
}

function places(value, found = []) {
  for (const key of Object.keys(value ?? {})) {
    found.push([value, key]);
    if (typeof value[key] === "object") places(value[key], found);
  }
  return found;
}

const others = [null, "x", 5, true, [], {}, ["x"], [["x"]], [{}], { x: "y" }, { x: ["y"] }, "yes", "10 %"];

function holdChanged(folder, name, times) {
  const original = fs.readFileSync(path.join(folder, name), "utf8");
  const larders = larderNames(folder);
  for (let i = 0; i < times; ++i) {
    const value = valueOf(original);
    const all = places(value);
    const [holder, key] = all[draw(all.length)];
    const other = others[draw(others.length)];
    if (draw(4) === 0) delete holder[key];
    else holder[key] = other;
    fs.writeFileSync(path.join(folder, name), yaml.stringify(value));
    hold(`${name}, "${key}" as ${JSON.stringify(other)}`, folder, name, larders);
  }
  fs.writeFileSync(path.join(folder, name), original);
}

function holdUnknownKeys(folder, name) {
  const value = valueOf(fs.readFileSync(path.join(folder, name), "utf8"));
  const validate = validators.get(kindOf(value));
  if (validate === undefined) return;
  if (!validate(value)) {
    complain(`${name}: ${ajv.errorsText(validate.errors)}${advice(validate.errors)}`);
  }
  value["a key that no file has"] = "x";
  if (validate(value)) complain(`${name}: a key that no file has is accepted`);
}

const copy = fs.mkdtempSync(path.join(os.tmpdir(), "platewright-schema-"));
fs.cpSync(path.join(root, "examples"), copy, { recursive: true });
const folders = fs.readdirSync(copy).map((name) => path.join(copy, name))
  .filter((name) => fs.statSync(name).isDirectory());
for (const folder of folders) {
  holdFolder(path.basename(folder), folder);
  for (const name of fs.readdirSync(folder).filter(isYaml)) {
    holdUnknownKeys(folder, name);
    holdChanged(folder, name, 8);
  }
}
fs.rmSync(copy, { recursive: true });
for (const folder of ["golden", "bad_input"]) {
  const cases = path.join(root, "tests", folder);
  for (const name of fs.readdirSync(cases).filter((file) => file.endsWith(".txt"))) {
    holdCase(path.join(cases, name));
  }
}
console.log(`${counts.files} files: the program accepts ${counts.accepted}, and of the ` +
  `${counts.refused} that it refuses the schemas refuse ${counts.refusedByBoth}`);
if (counts.accepted < 100 || counts.refusedByBoth < 30) complain("too few files were met");
process.exit(good ? 0 : 1);
