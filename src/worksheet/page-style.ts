/** A sheet of paper that a page is laid out for. */
export type Paper = 'A4' | 'A6';

/**
 * The one style sheet of the pages: ink on paper, rules and one neutral accent, inverted in dark mode, plain black on
 * white in print.
 */
const screenAndPrint = `
:root{color-scheme:light dark;--paper:#fcfbf8;--ink:#1c1e21;--accent:#566170;--rule:#c9cbd0;--wash:#f1f1ee}
@media (prefers-color-scheme:dark){:root{--paper:#16181b;--ink:#e9e7e2;--accent:#a5afbc;--rule:#454a52;--wash:#1f2226}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 Charter,"Bitstream Charter","Iowan Old Style",Georgia,Cambria,"DejaVu Serif",serif;font-variant-numeric:lining-nums tabular-nums;overflow-wrap:break-word}
main,footer{max-width:46rem;margin:0 auto;padding:0 1rem}
main{padding-top:2.25rem}
h1{font-size:1.55rem;line-height:1.25;margin:0 0 1rem;text-wrap:balance}
h2{font-size:1.05rem;line-height:1.3;margin:2.25rem 0 .5rem;padding-bottom:.3rem;border-bottom:1px solid var(--rule)}
p{margin:.35rem 0}
ol,ul{margin:0;padding:0;list-style:none}
a{color:inherit;text-decoration-color:var(--accent);text-underline-offset:.15em}
:focus-visible{outline:2px solid var(--ink);outline-offset:2px}
.line,summary{padding:.32rem 0;unicode-bidi:isolate}
summary{cursor:pointer;list-style:none;position:relative}
summary::-webkit-details-marker{display:none}
summary::before{content:"";position:absolute;left:-.85rem;top:calc(.32rem + .75em - .28rem);border:.28rem solid transparent;border-left:.42rem solid var(--accent)}
details[open]>summary::before{left:-.95rem;top:calc(.32rem + .75em - .14rem);border:.28rem solid transparent;border-top:.42rem solid var(--accent)}
.ledger>li,.criteria>li{border-bottom:1px solid var(--rule)}
.ledger>li>.line,.row,.columns{display:grid;grid-template-columns:minmax(0,1fr) 5.4rem 5.4rem;column-gap:.25rem;align-items:baseline}
.columns{font-size:.85rem;color:var(--accent);margin:0}
.columns span,.adds,.total{text-align:right;white-space:nowrap}
.columns span:first-child{grid-column:2}
.total{grid-column:3}
.total.wide{grid-column:2/-1}
.ledger>li:last-child{border-bottom:3px double var(--ink)}
.ledger>li:last-child .total{font-weight:700}
.detail{display:block;grid-column:1/-1;font-size:.88em;color:var(--accent)}
.outside .line,.outside>details>summary{font-weight:700}
.undetermined .line,.undetermined>details>summary{font-style:italic}
figure{margin:1.75rem 0 0}
figure svg{display:block;width:100%;height:auto;max-width:34rem}
figcaption{font-size:.9rem;color:var(--accent);margin-bottom:.5rem}
.way{margin:.1rem 0 .9rem;padding:.1rem 0 .1rem 1.4rem;border-left:1px solid var(--accent);font-size:.92rem;font-weight:400}
.step{margin:.7rem 0}
.step:target{background:var(--wash)}
.result{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1rem;font-weight:700}
.equation{display:flex;flex-wrap:wrap;gap:.2rem 1.8rem;overflow-x:auto;overflow-y:hidden;padding:.25rem 0}
math{font-size:1.08em}
sub{font-size:.72em;line-height:0}
table{border-collapse:collapse;width:100%;font-size:.92em}
caption{text-align:left;color:var(--accent);font-size:.95em;padding-top:.4rem}
th,td{text-align:left;font-weight:400;vertical-align:baseline;padding:.12rem .6rem .12rem 0;border-bottom:1px solid var(--rule)}
td.figure,th.figure{text-align:right;padding-right:0;padding-left:.6rem}
td{overflow-wrap:anywhere}
.checks{table-layout:fixed}
.checks tbody th{border-bottom:0;padding-top:.4rem}
.sources li{font-size:.92em;margin:.2rem 0}
.sources{margin-top:.35rem}
.access{font-style:italic}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
footer{margin-top:2.5rem;padding-bottom:2.5rem;font-size:.85rem;color:var(--accent)}
@media (max-width:30rem){
 body{font-size:.94rem}
 main{padding-top:1.25rem}
 h1{font-size:1.3rem}
 .ledger>li>.line,.row,.columns{grid-template-columns:minmax(0,1fr) 4.9rem 4.8rem}
 figure{margin-inline:-.5rem}
 figcaption{margin-inline:.5rem}
 .way{padding-left:1.1rem}
}
@media print{
 :root{color-scheme:light;--paper:#fff;--ink:#000;--accent:#000;--rule:#999;--wash:#fff}
 body{line-height:1.34}
 main,footer{max-width:none;padding:0}
 h1{font-size:1.45rem;margin-bottom:.5rem}
 h2{margin:.95rem 0 .2rem;padding-bottom:.15rem;break-after:avoid}
 li,figure,.step,tr{break-inside:avoid}
 .columns,figcaption{break-after:avoid}
 p,li{orphans:2;widows:2}
 summary,.line{padding:.14rem 0}
 summary::before,.on-screen{display:none}
 a{text-decoration:none}
 figure{margin-top:.8rem}
 figcaption{margin-bottom:.2rem}
 .equation{overflow:visible}
 footer{margin-top:.9rem;padding:0}
}
`;

/** What differs between the sheets: the browser knows its paper only after it has read this, so it is no media query. */
const sheets: Readonly<Record<Paper, string>> = {
  A4: `@page{size:210mm 297mm;margin:13mm 18mm}
@media print{
 html{font-size:9.4pt}
 figure svg{max-width:84mm}
 .figures{display:flex;gap:6mm}
 .figures figure{flex:0 1 84mm}
 .criteria,.ledger{break-inside:avoid}
}
`,
  A6: `@page{size:105mm 148mm;margin:7mm 8mm}
@media print{
 html{font-size:7pt}
 .ledger>li>.line,.row,.columns{grid-template-columns:minmax(0,1fr) 13mm 13mm}
 figure{margin-inline:0}
 figure svg{max-width:74mm;margin:0 auto}
}
`,
};

/** The style sheet of a page for one sheet of paper. */
export function styleFor(paper: Paper): string {
  return `${screenAndPrint}${sheets[paper]}`;
}
