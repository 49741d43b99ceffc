/** Font stacks of the two faces. The bundled families come first, static before variable. */
export const fontStacks = {
  serif: "Literata, 'Literata Variable', Georgia, 'DejaVu Serif', serif",
  // Literata follows for the Greek letters that the sans lacks.
  sans: "'Atkinson Hyperlegible Next', 'Atkinson Hyperlegible Next Variable', Literata, 'Literata Variable', Verdana, 'DejaVu Sans', sans-serif",
} as const;
