import { describe, expect, it } from 'vitest';
import { fileName, nameFromFile } from '../../../src/storage/file-names.ts';

describe('a file name', () => {
  it.each([
    ['Old dots & new stripes', 'png', 'old-dots-new-stripes.png'],
    ['Anna’s “best”: 12×12 / 2', 'svg', 'annas-best-12-12-2.svg'],
    ['Äpfel für Zoë', 'pdf', 'äpfel-für-zoë.pdf'],
    ['紙と花', 'quire', '紙と花.quire'],
    ['../../etc/passwd', 'png', 'etc-passwd.png'],
    ['...', 'png', 'quirewise.png'],
    ['', 'quire', 'quirewise.quire'],
    ['CON', 'png', 'con-notebook.png'],
    ['😀', 'png', 'quirewise.png'],
  ] as const)('of %s is one that every system takes', (title, end, name) => {
    expect(fileName(title, end)).toBe(name);
  });

  it('is cut to a sensible length without breaking a letter, and carries its day', () => {
    const name = fileName('𠮷'.repeat(200), 'quire', new Date(2026, 10, 5));
    expect(name.endsWith('-2026-11-05.quire')).toBe(true);
    expect([...name].length).toBeLessThanOrEqual(86);
    expect(name.isWellFormed()).toBe(true);
  });
});

it('a sheet is named for its picture', () => {
  expect(nameFromFile('old_rose-vine.JPG')).toBe('Old rose vine');
  expect(nameFromFile('C:\\papers\\dots.png')).toBe('Dots');
  expect(nameFromFile('.png')).toBe('A sheet');
  expect(nameFromFile('v1.2 draft.jpeg')).toBe('V1.2 draft');
});
