import type { Column } from './trade-words-model.ts';

/** Words for greens, blues and violets. Source: common practice, no source; the borders are ours. */
export const coolColumns: readonly Column[] = [
  [
    110,
    118,
    [
      [0.66, 0.045, 'olive'],
      [0.78, 0.022, 'sage', 0.065, 'moss', 0.13, 'chartreuse'],
      [0.9, 0.022, 'sage', 0.07, 'pistachio', 0.13, 'chartreuse'],
      [0.955, 0.045, 'butter', 0.11, 'lemon', 0.2, 'yellow'],
      [1.01, 0.012, 'ivory', 0.03, 'butter', 0.11, 'lemon', 0.2, 'yellow'],
    ],
  ],
  [
    118,
    132,
    [
      [0.36, 0.04, 'forest green'],
      [0.5, 0.04, 'moss'],
      [0.7, 0.022, 'sage', 0.065, 'moss', 0.13, 'leaf green'],
      [0.78, 0.022, 'sage', 0.07, 'pistachio', 0.13, 'lime'],
      [0.86, 0.022, 'sage', 0.05, 'pistachio', 0.13, 'lime'],
      [1.01, 0.04, 'pistachio', 0.13, 'lime'],
    ],
  ],
  [
    132,
    148,
    [
      [0.48, 0.04, 'forest green'],
      [0.72, 0.022, 'sage', 0.07, 'leaf green', 0.15, 'grass green'],
      [0.82, 0.022, 'sage', 0.07, 'pistachio', 0.13, 'apple green'],
      [1.01, 0.03, 'pistachio', 0.13, 'apple green'],
    ],
  ],
  [
    148,
    160,
    [
      [0.5, 0.04, 'forest green'],
      [0.8, 0.022, 'sage', 0.07, 'sea green', 0.11, 'emerald'],
      [1.01, 0.03, 'mint'],
    ],
  ],
  [
    160,
    174,
    [
      [0.5, 0.035, 'forest green'],
      [0.8, 0.035, 'sea green', 0.11, 'emerald'],
      [1.01, 0.025, 'mint'],
    ],
  ],
  [
    174,
    182,
    [
      [0.62, 0.035, 'teal'],
      [0.8, 0.035, 'sea green', 0.09, 'turquoise'],
      [1.01, 0.025, 'mint', 0.1, 'turquoise'],
    ],
  ],
  [
    182,
    190,
    [
      [0.62, 0.035, 'teal'],
      [1.01, 0.04, 'aqua', 0.105, 'turquoise'],
    ],
  ],
  [
    190,
    206,
    [
      [0.62, 0.035, 'teal'],
      [1.01, 0.04, 'aqua'],
    ],
  ],
  [
    206,
    220,
    [
      [0.6, 0.04, 'teal'],
      [0.78, 0.045, 'aqua'],
      [1.01, 0.025, 'powder blue', 0.055, 'sky blue'],
    ],
  ],
  [
    220,
    243,
    [
      [0.38, 0.04, 'navy'],
      [0.62, 0.03, 'slate', 0.05, 'denim', 0.105, 'blue'],
      [0.72, 0.035, 'dusty blue', 0.08, 'sky blue'],
      [1.01, 0.025, 'powder blue', 0.055, 'sky blue'],
    ],
  ],
  [
    243,
    257,
    [
      [0.38, 0.04, 'navy'],
      [0.62, 0.03, 'slate', 0.05, 'denim', 0.105, 'blue'],
      [0.76, 0.035, 'dusty blue', 0.08, 'sky blue'],
      [1.01, 0.025, 'powder blue', 0.055, 'sky blue'],
    ],
  ],
  [
    257,
    268,
    [
      [0.38, 0.04, 'navy'],
      [0.45, 0.03, 'slate', 0.05, 'denim', 0.1, 'cobalt', 0.24, 'blue'],
      [0.62, 0.02, 'slate', 0.05, 'denim', 0.11, 'royal blue', 0.24, 'blue'],
      [0.76, 0.035, 'dusty blue', 0.075, 'cornflower'],
      [1.01, 0.025, 'powder blue', 0.055, 'sky blue'],
    ],
  ],
  [
    268,
    284,
    [
      [0.38, 0.04, 'navy'],
      [0.6, 0.03, 'slate', 0.09, 'ultramarine'],
      [0.84, 0.045, 'periwinkle'],
      [1.01, 0.03, 'lavender'],
    ],
  ],
  [
    284,
    298,
    [
      [0.42, 0.04, 'indigo'],
      [0.62, 0.04, 'purple', 0.12, 'violet'],
      [1.01, 0.03, 'lavender'],
    ],
  ],
  [
    298,
    309,
    [
      [0.32, 0.035, 'aubergine', 0.11, 'indigo'],
      [0.6, 0.04, 'purple', 0.14, 'violet'],
      [1.01, 0.03, 'lavender'],
    ],
  ],
  [
    309,
    322,
    [
      [0.32, 0.03, 'aubergine'],
      [0.6, 0.04, 'purple'],
      [1.01, 0.03, 'lilac', 0.16, 'orchid'],
    ],
  ],
  [
    322,
    336,
    [
      [0.33, 0.03, 'aubergine', 0.12, 'purple'],
      [0.55, 0.04, 'plum', 0.14, 'purple'],
      [0.68, 0.035, 'mauve', 0.1, 'orchid', 0.2, 'magenta'],
      [1.01, 0.03, 'lilac', 0.11, 'orchid', 0.24, 'magenta'],
    ],
  ],
];
