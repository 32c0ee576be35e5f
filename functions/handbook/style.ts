/** One sheet for screen and paper; only fonts the reader already has. */
export const styleSheet = `:root { --ink: #1f2a33; --quiet: #5b6b78; --line: #cfd8de; --tint: #eef3f5; --mark: #1f475c; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem 1.2rem 4rem; color: var(--ink); background: #fff;
  font: 16px/1.55 "Segoe UI", "Liberation Sans", Arial, sans-serif; }
a { color: #0b5a82; }
nav { display: flex; flex-wrap: wrap; gap: .3rem 1rem; padding-bottom: .8rem; border-bottom: 1px solid var(--line); }
h1 { font-size: 1.7rem; line-height: 1.25; margin: 1.4rem 0 .6rem; color: var(--mark); }
h2 { font-size: 1.25rem; margin: 2.2rem 0 .5rem; color: var(--mark); }
h3 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
section + section { border-top: 1px solid var(--line); }
code, .formula { font-family: Consolas, "Liberation Mono", monospace; font-size: .92em; background: var(--tint);
  padding: .05em .25em; border-radius: 3px; overflow-wrap: anywhere; }
td > code:first-child { white-space: nowrap; }
td > .formula { display: inline-block; min-width: 18rem; }
.call { display: block; padding: .5rem .7rem; margin: .5rem 0; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; margin: .4rem 0 .8rem; font-size: .93rem; }
th, td { border: 1px solid var(--line); padding: .3rem .55rem; text-align: left; vertical-align: top; }
th { background: var(--tint); font-weight: 600; }
.source, .quiet { color: var(--quiet); font-size: .9rem; }
.error { font-weight: 600; color: #8d2b12; }
.cautions { border-left: 4px solid #c9892b; background: #fdf7ec; padding: .6rem 1rem .6rem 2.2rem; margin: 1rem 0; }
.cautions li { margin: .2rem 0; }
ol.steps > li { margin: .5rem 0; }
footer { margin-top: 3rem; padding-top: .8rem; border-top: 1px solid var(--line); color: var(--quiet); font-size: .88rem; }
@media print {
  body { max-width: none; padding: 0; font-size: 10.5pt; }
  nav { display: none; }
  a { color: inherit; text-decoration: none; }
  section, tr { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  .wide { overflow: visible; }
  td > .formula { min-width: 14rem; }
}
`;
