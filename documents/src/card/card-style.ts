/** Paper of a card. */
export type CardPaper = "a5" | "a4" | "letter";

interface Sheet {
  /** [mm] */
  readonly width: number;
  readonly height: number;
  readonly sides: number;
  readonly ends: number;
  /** Of the letters that nearly all is set in [pt], and of smaller ones where there is much to say; 1 em of the card. */
  readonly letters: number;
  readonly small: number;
}

const sheets: Readonly<Record<CardPaper, Sheet>> = Object.freeze({
  a5: { width: 148, height: 210, sides: 8, ends: 7, letters: 8.4, small: 8 },
  a4: { width: 210, height: 297, sides: 12, ends: 10, letters: 11.8, small: 10 },
  letter: { width: 215.9, height: 279.4, sides: 12, ends: 9, letters: 11.1, small: 9.5 },
});

export const cardPapers = Object.freeze(Object.keys(sheets) as CardPaper[]);

/** [mm] */
const POINT = 25.4 / 72;
/** Height of a line [em]. */
const LINE = 1.22;
/** Side of the code with its border [em]: 44 mm on A5, and where there is much to say 37 mm. */
export const codeSide = Object.freeze({ usual: 14.85, tight: 13 });
/** Between columns [em]. */
export const GAP = 1;

/** Room of a sheet within its margins: width [em] and height [lines of 1 em letters]. */
export function roomOf(paper: CardPaper, small: boolean): { readonly width: number; readonly lines: number } {
  const { width, height, sides, ends, ...letters } = sheets[paper];
  const em = (small ? letters.small : letters.letters) * POINT;
  return { width: (width - 2 * sides) / em, lines: (height - 2 * ends) / (LINE * em) };
}

/** The look of a card: black ink on white, no colour, nothing from elsewhere. */
export function stylesOf(paper: CardPaper, small: boolean): string {
  const { width, height, sides, ends, ...letters } = sheets[paper];
  return `@page{size:${width}mm ${height}mm;margin:0}
.flight-card,.flight-card *{box-sizing:border-box;margin:0}
.flight-card{display:flex;flex-direction:column;width:${width}mm;height:${height}mm;padding:${ends}mm ${sides}mm;overflow:hidden;background:#fff;color:#000;font:${small ? letters.small : letters.letters}pt/${LINE} "Helvetica Neue",Helvetica,Arial,"Liberation Sans",Roboto,sans-serif;font-variant-numeric:tabular-nums;text-align:left;overflow-wrap:break-word;color-scheme:light;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.flight-card>*{flex:none}
.flight-card h1,.flight-card h2{font-size:1em;font-weight:700}
.flight-card table{border-collapse:collapse;width:100%}
.flight-card th{font-weight:400;text-align:left;vertical-align:top}
.flight-card td{vertical-align:top}
.flight-card ul{list-style:none;padding:0}
.flight-card .fc-head{display:flex;justify-content:space-between;align-items:flex-end;gap:1em;border-bottom:.25em solid #000;padding-bottom:.2em}
.flight-card .fc-head h1{font-size:1.75em;line-height:1.1;white-space:nowrap}
.flight-card .fc-head p{text-align:right}
.flight-card .fc-blanks{display:grid;grid-template-columns:3fr 2fr 1fr 1fr;gap:.9em;padding-top:.35em}
.flight-card .fc-blanks p{border-bottom:.09em solid #000;min-height:1.6em}
.flight-card .fc-blanks b{padding-left:.4em}
.flight-card .fc-stop{margin-top:.5em;padding:.25em .6em .3em;background:#000;color:#fff}
.flight-card .fc-stop h2{font-size:1.15em}
.flight-card .fc-stop-two{column-count:2;column-gap:${GAP}em}
.flight-card .fc-stop-two li{break-inside:avoid}
.flight-card .fc-craft{display:grid;grid-template-columns:1fr 1fr;gap:${GAP}em;padding:.45em 0}
.flight-card .fc-craft>div{min-width:0}
.flight-card .fc-craft h2{font-size:1.2em}
.flight-card .fc-delay{border-top:.09em solid #000;border-bottom:.09em solid #000;padding:.25em 0 .35em}
.flight-card .fc-lead{display:flex;align-items:baseline;gap:.8em}
.flight-card .fc-lead b{font-size:2em;line-height:1.15;white-space:nowrap}
.flight-card .fc-delay th,.flight-card .fc-delay td{padding:.12em 0 .05em .5em;border-top:.05em solid #777}
.flight-card .fc-delay th:first-child{padding-left:0;width:26%;overflow-wrap:anywhere}
.flight-card .fc-delay td{white-space:nowrap}
.flight-card .fc-delay thead th,.flight-card .fc-delay thead td{border-top:0}
.flight-card .fc-delay .fc-figure{font-weight:700;font-size:1.15em;white-space:nowrap}
.flight-card .fc-blank{display:inline-block;width:3.2em;border-bottom:.09em solid #000}
.flight-card .fc-mid{display:flex;align-items:flex-start;gap:${GAP}em;padding:.35em 0 .3em}
.flight-card .fc-rows{flex:1;min-width:0}
.flight-card .fc-code{width:${codeSide.usual}em}
.flight-card .fc-code-tight{width:${codeSide.tight}em}
.flight-card .fc-code svg{display:block;width:100%;height:auto}
.flight-card .fc-code p{text-align:center;line-height:1.1}
.flight-card .fc-rows th{width:6.2em;padding:0 .5em 0 0}
.flight-card .fc-rows td{padding:0 0 .1em}
.flight-card .fc-checks{flex:0 1 auto;min-height:0;overflow:hidden;border-top:.09em solid #000;padding:.25em 0 .3em}
.flight-card .fc-checks li{padding-left:.7em;text-indent:-.7em}
.flight-card .fc-word{display:inline-block;text-indent:0;padding:0 .35em;border:.12em solid #000;line-height:1.05;font-weight:700}
.flight-card .fc-word-stop{background:#000;color:#fff}
.flight-card .fc-cautions{border-top:.09em solid #000;padding:.3em 0 .35em;column-count:2;column-gap:${GAP}em}
.flight-card .fc-cautions-tight{column-count:1}
.flight-card .fc-cautions p{break-inside:avoid;border-left:.4em solid #000;padding-left:.5em;margin-bottom:.25em}
.flight-card .fc-sign{display:grid;grid-template-columns:1fr 1fr;margin-top:auto;border-top:.25em solid #000;border-bottom:.09em solid #000}
.flight-card .fc-sign p{height:3.6em;padding:.15em .5em 0}
.flight-card .fc-sign p+p{border-left:.09em solid #000}
.flight-card .fc-after{display:flex;flex-wrap:wrap;gap:0 1em;padding-top:.35em}
.flight-card .fc-after i{display:inline-block;width:.85em;height:.85em;border:.12em solid #000;margin-right:.3em;vertical-align:-.08em}
.flight-card .fc-after span:last-child{margin-left:auto}
.flight-card .fc-foot{padding-top:.3em}
@media screen{.flight-card{margin:0 auto;box-shadow:0 0 0 1px #999}}
@media print{.flight-card{break-inside:avoid;break-after:avoid}}
`;
}
