// SPDX-License-Identifier: MIT
#include "card/html/page_style.hpp"

namespace platewright::detail {

// A sheet that is read while standing at a table has letters whose capitals are 3.5 mm high, which
// is 16 minutes of arc from 75 cm: the least that guidance on legibility asks (from memory).
const Literal page_style = R"css(
:root { color: #000; background: #fff; }
body { margin: 0 auto; padding: 1em; max-width: 54em; font-family: sans-serif; font-size: 11pt;
  line-height: 1.35; font-variant-numeric: tabular-nums; }
body.standing { font-size: 14pt; }
body.guests { font-size: 16pt; }
body.large { font-size: 19pt; }
h1, h2, h3, p, ol, ul { margin: 0; }
h1 { font-size: 1.6em; line-height: 1.2; }
h2, h3 { font-size: 1.1em; line-height: 1.25; }
p, caption, li { overflow-wrap: anywhere; }
header { border-bottom: .2em double; padding-bottom: .4em; margin-bottom: 1em; }
header .date { font-weight: bold; }
section, figure { margin: 0 0 1.1em; }
.part > h2 { font-size: 1.4em; border-bottom: .12em solid; margin: 0 0 .6em; }
.text p + p { margin-top: .5em; }

table { border-collapse: collapse; width: 100%; }
caption { text-align: left; padding-bottom: .2em; }
th, td { text-align: left; vertical-align: baseline; padding: .2em .9em .2em 0;
  border-bottom: .05em solid #999; }
th:last-child, td:last-child { padding-right: 0; }
th { font-weight: normal; }
thead th { font-size: .85em; vertical-align: bottom; border-bottom: .12em solid; }
.figures { text-align: right; white-space: nowrap; }
.figures + .words { padding-left: .6em; }
.brief { white-space: nowrap; }
.long { overflow-wrap: anywhere; }
.crowded { font-size: .85em; }
.crowded th, .crowded td { padding-right: .5em; }
.crowded .words { overflow-wrap: anywhere; }
.crowded .figures, .crowded .brief { white-space: normal; }
.packed { font-size: .6em; }
.again { display: none; }
.again th { font-size: 1.1em; font-weight: bold; border: 0; }
.group th { font-weight: bold; padding-top: .7em; border-bottom: .08em solid; }
.totals th, .totals td { font-weight: bold; border-bottom: 0; }
.totals tr:first-child > * { border-top: .12em solid; }
.facts { width: auto; max-width: 100%; }
.facts th, .facts td { border: 0; padding-top: .05em; padding-bottom: .05em; }
.facts th { padding-right: 1.6em; }
.facts td { font-weight: bold; }
.note { margin-top: .4em; font-size: .9em; }
sup { font-size: .7em; line-height: 0; padding-left: .15em; }
a { color: inherit; text-decoration: none; }

.bar { display: block; width: 100%; height: 1.1em; overflow: visible; }
.bar rect { fill: currentColor; stroke: currentColor; vector-effect: non-scaling-stroke; }
.bar .rest { fill: none; stroke-dasharray: 2 2; }
.bars td, .bars th { border: 0; vertical-align: middle; }
.bars .drawn { width: 55%; }

svg { fill: none; stroke: currentColor; }
svg text { fill: currentColor; stroke: none; text-anchor: middle; font-size: 13px; }
svg .begins { text-anchor: start; }
svg .ends { text-anchor: end; }
svg line { stroke-width: .6; stroke-opacity: .45; }
.lane { display: block; width: 100%; height: auto; }
.lane text { font-weight: bold; }
.lane rect { stroke-width: 1.2; fill: currentColor; fill-opacity: .14; }
.lanes td, .lanes th { border: 0; padding-top: 0; padding-bottom: 0; vertical-align: middle; }
.lanes .group th { padding-top: .5em; }
.lanes .drawn { width: 80%; }
.plot svg { display: block; width: 100%; max-width: 44em; height: auto; }
.plot polyline, .curves polyline { stroke-width: 1.8; }
.plot circle { fill: currentColor; stroke: none; }
.curves { list-style: none; padding: 0; display: flex; gap: 2em; }
.curves li { display: flex; align-items: center; gap: .5em; }
.plot .curves svg { width: 3em; display: inline-block; }

.steps { padding: 0; list-style: none; counter-reset: step; }
.steps > li { counter-increment: step; position: relative; padding-left: 2em; margin-top: .6em; }
.steps > li::before { content: counter(step) "."; position: absolute; left: 0; font-weight: bold; }
.takes { white-space: nowrap; font-weight: bold; }
.uses { width: auto; margin-top: .2em; }
.uses td, .uses th { border: 0; padding-top: 0; padding-bottom: 0; }
.uses .figures { min-width: 5em; white-space: normal; }

.box { border: .2em solid; padding: .5em .8em; }
.box h2, .box h3 { margin-bottom: .3em; }
.cut { margin-bottom: 1.5em; }
.cut-row { display: flex; }
.cut-row + .cut-row { margin-top: -.08em; }
.label { flex: 1 1 0; max-width: 50%; box-sizing: border-box; margin: 0; padding: 1.1em;
  border: .08em dashed; }
.label + .label { border-left: 0; }
.label h2 { font-size: 1.3em; margin-bottom: .2em; }
.label p + p { margin-top: .5em; }
.signatures { display: grid; grid-template-columns: 1fr 1fr; column-gap: 3em; }
.signatures p { border-top: .08em solid; margin-top: 4.5em; padding-top: .2em; }
.sources { font-size: 9pt; }
.sources ol { padding: 0; list-style: none; counter-reset: source; }
.sources li { counter-increment: source; position: relative; padding-left: 2.2em; }
.sources li::before { content: "[" counter(source) "]"; position: absolute; left: 0; }

@media screen and (max-width: 40em) {
  section { overflow-x: auto; }
  table { font-size: .85em; }
  .figures { white-space: normal; }
  .cut-row { display: block; }
  .label { max-width: none; }
  .label + .label { border-left: .08em dashed; border-top: 0; }
  .signatures { grid-template-columns: 1fr; }
}
@media screen and (prefers-color-scheme: dark) {
  :root { color-scheme: dark; color: #eee; background: #161616; }
  th, td { border-bottom-color: #777; }
}
@page { margin: 14mm 14mm 17mm;
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt sans-serif; } }
@media print {
  :root { color-scheme: light; color: #000; background: #fff; }
  body { max-width: none; padding: 0; }
  thead { display: table-header-group; }
  .again { display: table-row; }
  .long-table caption { display: none; }
  tr, td, th, li, .box, .cut-row, .signatures, figure, table.short { break-inside: avoid; }
  h1, h2, h3, caption, .group, thead { break-after: avoid; }
  .totals { break-before: avoid; }
  .sheet-cards .part ~ .part { break-before: page; }
  p, li { orphans: 3; widows: 3; }
}
)css";

}  // namespace platewright::detail
