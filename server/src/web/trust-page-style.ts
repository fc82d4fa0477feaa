/** Plain and large: read once, on a small screen, often outdoors. Colours of Okabe and Ito on black and white. */
export const trustPageStyle = `
:root { color-scheme: light dark; --paper: #fff; --ink: #000; --rule: #0072b2; --on-rule: #fff; --aside: #e69f00; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #000; --ink: #fff; --rule: #56b4e9; --on-rule: #000; }
}
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1.125rem/1.5 system-ui, sans-serif; }
main { max-width: 42rem; margin: 0 auto; padding: 1.5rem 1rem 4rem; }
h1 { font-size: clamp(2rem, 9vw, 3.25rem); line-height: 1.05; margin: 0 0 1rem; letter-spacing: -0.02em; }
h2 { font-size: 1.5rem; margin: 0 0 0.5rem; }
.lead { font-size: 1.25rem; }
details { border-top: 3px solid var(--ink); padding: 0.25rem 0; }
details:last-of-type { border-bottom: 3px solid var(--ink); }
summary { font-size: 1.5rem; font-weight: 700; padding: 0.6rem 0; cursor: pointer; min-height: 3rem; }
summary:focus-visible, a:focus-visible { outline: 4px solid var(--rule); outline-offset: 2px; }
li { margin: 0.5rem 0; }
a { color: var(--rule); }
.button { display: inline-block; background: var(--rule); color: var(--on-rule); font-weight: 700; text-decoration: none;
  padding: 0.8rem 1.2rem; min-height: 3rem; }
section { margin-top: 2.5rem; padding-left: 1rem; border-left: 10px solid var(--rule); }
.without { border-left: 10px double var(--aside); }
.number { font: 1.125rem/1.6 ui-monospace, monospace; overflow-wrap: anywhere; }
`;
