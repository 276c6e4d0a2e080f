// Reads a calendar by ical.js and holds it against the timeline that it was made of: read_back.cjs
// FOLDER CALENDAR TIMELINE, where FOLDER holds the package and TIMELINE is the timeline as JSON.
"use strict";

const assert = require("assert");
const fs = require("fs");
const path = require("path");

const [folder, calendarFile, timelineFile] = process.argv.slice(2);
const ICAL = require(path.resolve(folder, "node_modules/ical.js/dist/ical.es5.cjs"));
const bytes = fs.readFileSync(calendarFile);
const rows = JSON.parse(fs.readFileSync(timelineFile, "utf8")).arrays.clock;

// RFC 5545, 3.1: lines end with CR LF and are no longer than 75 octets; none is broken UTF-8.
const lines = bytes.toString("latin1").split("\r\n");
assert.strictEqual(lines.pop(), "");
for (const line of lines) {
  assert(!/[\r\n]/.test(line) && line.length <= 75, line);
  assert(!Buffer.from(line, "latin1").toString("utf8").includes("\uFFFD"), line);
}

const calendar = new ICAL.Component(ICAL.parse(bytes.toString("utf8")));
const events = calendar.getAllSubcomponents("vevent").map((part) => new ICAL.Event(part));
assert.strictEqual(events.length, rows.length);
assert(events.length > 0);
assert.strictEqual(new Set(events.map((event) => event.uid)).size, events.length);
events.forEach((event, i) => {
  const row = rows[i];
  const day = row.kind === "order" || row.kind === "delivery";
  // The hour until which a supplier takes an order.
  const [onDay, until] = row.latest_at.split("T");
  const by = day && until ? ", by " + until : "";
  assert.strictEqual(event.summary, (row.recipe ? row.recipe + ": " : "") + row.what + by);
  assert.match(event.uid, /^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.strictEqual(event.startDate.isDate, day);
  if (day) {
    assert.strictEqual(event.startDate.toString(), onDay);
  } else {
    assert.strictEqual(event.startDate.zone, ICAL.Timezone.utcTimezone);
    assert.strictEqual(event.startDate.toJSDate().getTime(), Date.parse(row.latest_at));
  }
  const alarms = event.component.getAllSubcomponents("valarm");
  assert.strictEqual(alarms.length, 1);
  const trigger = alarms[0].getFirstPropertyValue("trigger");
  // At nine, or an hour before an order is too late.
  const [hour, minute] = (by ? until : "24:00").split(":").map(Number);
  const onTheDay = Math.min(9 * 3600, (hour - 1) * 3600 + minute * 60);
  assert.strictEqual(trigger.toSeconds(), day ? onTheDay : -15 * 60);
});
console.log(events.length + " entries read back equal");
