#include <ringfill/report/page/sheet_style.hpp>

namespace ringfill {
namespace {

/// For every reader. Lines are the drawing's: 2 px for what bounds, 1 px for what parts.
constexpr std::string_view common = R"css(
html { color: #000; background: #fff; font: 16px/1.4 sans-serif; -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; padding: 12px; max-width: 58rem; overflow-wrap: break-word; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .3rem; padding-bottom: .3rem; border-bottom: 4px solid #000; }
h2 { font-size: 1.3rem; line-height: 1.2; margin: 1.8rem 0 .5rem; padding-bottom: .15rem; border-bottom: 2px solid #000; }
h3 { font-size: 1.1rem; line-height: 1.25; margin: 1.2rem 0 .3rem; }
h4 { font-size: 1rem; margin: .6rem 0 .2rem; }
p { margin: .4rem 0; }
ul { margin: .3rem 0; padding-left: 1.1rem; }
li { margin: .2rem 0; }
p.job { font-size: 1.25rem; font-weight: bold; }
p.sum, .limits p { font-weight: bold; }
.stop { border: 4px double #000; padding: .3rem .5rem; font-weight: bold; }
[data-figure], [data-given] { white-space: nowrap; }
[data-text] { overflow-wrap: anywhere; }
table.steps [data-text] { overflow-wrap: normal; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .2rem 1rem; }
nav li { min-width: 0; }
nav a { color: #000; overflow-wrap: anywhere; }
table { width: 100%; border-collapse: collapse; margin: .6rem 0; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: bold; padding: .2rem 0; }
th, td { text-align: left; vertical-align: top; font-weight: normal; padding: .15rem .5rem .15rem 0; border-bottom: 1px solid #000; }
th:last-child, td:last-child { padding-right: 0; }
thead th { font-weight: bold; vertical-align: bottom; border-bottom: 2px solid #000; }
.number { text-align: right; }
.number + :not(.number) { padding-left: .9rem; }
.tick { display: inline-block; box-sizing: border-box; width: .95em; height: .95em; border: 2px solid #000; margin-right: .4em; vertical-align: -.1em; }
ul.cautions { list-style: none; padding-left: 1.5em; }
ul.cautions .tick { margin-left: -1.5em; margin-right: .55em; }
dl.facts { margin: .5rem 0; border-top: 1px solid #000; }
dl.facts div { display: grid; grid-template-columns: 8rem 1fr; gap: .5rem; padding: .15rem 0; border-bottom: 1px solid #000; }
dl.facts dd { margin: 0; min-width: 0; }
figure { margin: .6rem 0; min-width: 0; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { font-weight: bold; padding: .2rem 0; }
table.form { table-layout: fixed; }
table.form th, table.form td { border: 1px solid #000; padding: .25rem .3rem; height: 1.6em; }
.lines .line { height: 2.2em; border-bottom: 1px solid #000; }
.blank { display: inline-block; width: 12em; border-bottom: 1px solid #000; height: 1.2em; }
table.small, ul.compact { font-size: .9rem; }
table.tiny { font-size: .8rem; }
table.tiny { table-layout: fixed; }
table.tiny td, table.tiny th { overflow-wrap: anywhere; }
table.tiny th:nth-child(1) { width: 23%; }
table.tiny th:nth-child(2) { width: 15%; }
table.tiny th:nth-child(3) { width: 25%; }
table.tiny th:nth-child(5) { width: 10%; }
footer { margin-top: 1.5rem; border-top: 2px solid #000; font-weight: bold; }
)css";

/// Narrow: tables of many columns show a row as a block, each cell under its head.
constexpr std::string_view narrow = R"css(
@media screen and (max-width: 640px) {
  table { font-size: .82rem; }
  th, td { padding-right: .3rem; }
  table.small td, table.day th { overflow-wrap: anywhere; }
  [data-shown=clock] { white-space: normal; }
  table.cuts [data-figure] { white-space: normal; }
  table.form { font-size: .68rem; }
  table.form th, table.form td { padding: .15rem; overflow-wrap: anywhere; hyphens: auto; }
  table.take { table-layout: fixed; }
  table.take th:nth-child(1) { width: 40%; }
  table.take th:nth-child(2) { width: 18%; }
  table.take th:nth-child(3) { width: 15%; }
  table.wide, table.wide caption, table.wide tbody, table.wide tr, table.wide th, table.wide td { display: block; text-align: left; }
  table.wide { font-size: .95rem; }
  table.wide thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  table.wide tr { border-bottom: 1px solid #000; padding: .3rem 0; }
  table.wide th, table.wide td { border: 0; padding: 0; white-space: normal; overflow-wrap: anywhere; }
  table.wide th { font-weight: bold; }
  table.wide th:nth-child(n) { width: auto; }
  table.wide td:nth-child(n) { padding-left: 0; }
  table.wide:not(.small):not(.tiny) td { display: inline-block; width: 49%; vertical-align: top; }
  table.wide td:empty { display: none !important; }
  table.wide td::before { content: attr(data-head) ": "; }
  table.wide [data-figure] { white-space: normal; }
  dl.facts div { grid-template-columns: 6.2rem 1fr; }
}
)css";

/// Wider screens and paper set the drawings, facts and lists of steps side by side.
constexpr std::string_view beside = R"css(
@media print, screen and (min-width: 641px) {
  .drawings, .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 1.2rem; align-items: start; }
  .pair table { font-size: .85rem; }
  dl.facts { columns: 2; column-gap: 1.2rem; }
  dl.facts div { break-inside: avoid; }
}
)css";

/// Paper: the printer's own size, nothing wider than 186 mm.
constexpr std::string_view paper = R"css(
@media print {
  html { font-size: 9.5pt; line-height: 1.3; }
  body { padding: 0; max-width: 186mm; margin: 0; }
  nav { display: none; }
  h1 { font-size: 17pt; border-bottom-width: 1mm; }
  h2 { border-bottom-width: .5mm; margin-top: 1rem; }
  p { margin: .25rem 0; }
  h1, h2, h3, h4, caption { break-after: avoid; }
  thead { display: table-header-group; }
  tr, li, figure, svg, dl.facts div, .line, table.form, table.gauge, table.day { break-inside: avoid; }
  p { widows: 3; orphans: 3; }
  th, td, dl.facts div, .line { border-bottom-width: .25mm; }
  table.take th, table.take td { padding-top: .08rem; padding-bottom: .08rem; }
  thead th { border-bottom-width: .5mm; }
  section.bore, section.job, section.working { break-before: page; }
  section.bore > h2, section.job > h2:first-child, section.working > h2 { margin-top: 0; }
  table.form th, table.form td { border-width: .25mm; height: 5mm; }
  .line { height: 8mm; }
  table.small { font-size: 8pt; }
  table.tiny { font-size: 6.5pt; line-height: 1.2; }
  table.tiny th, table.tiny td { padding-top: 0; padding-bottom: 0; }
  footer { border-top-width: .5mm; }
}
)css";

} // namespace

std::string sheet_style(std::string_view footer) {
    std::string style;
    for (const std::string_view part : {common, narrow, beside, paper})
        style += part;
    style += "@page { margin: 12mm; @bottom-left { content: \"";
    style += footer;
    style += "\"; font: 7pt sans-serif; white-space: nowrap; }"
             " @bottom-right { content: counter(page) \" / \" counter(pages); font: 7pt sans-serif; } }\n";
    return style;
}

} // namespace ringfill
